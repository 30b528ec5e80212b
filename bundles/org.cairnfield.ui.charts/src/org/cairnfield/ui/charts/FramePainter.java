package org.cairnfield.ui.charts;

import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Rectangle;

/** Draws grid, axes, tick labels and headings of a plot. */
record FramePainter(Paper paper, Frame frame) {

	static Frame.Measures measures(Paper paper, int legend) {
		return new Frame.Measures(paper.width, paper.height, paper.line, paper.gap, paper.width("0"), legend);
	}

	void draw(Axis xAxis, Axis yAxis, boolean gridAcross) {
		Rectangle plot = frame.plot();
		int bottom = plot.y + plot.height;
		paper.stroke(paper.look.faint(), 1);
		for (int t = 0; t < frame.yTicks().size(); t++) {
			int y = (int) Math.round(frame.yOf(frame.yTicks().value(t)));
			paper.gc.drawLine(plot.x, y, plot.x + plot.width, y);
		}
		for (int t = 0; gridAcross && t < frame.xTicks().size(); t++) {
			int x = (int) Math.round(frame.xOf(frame.xTicks().value(t)));
			paper.gc.drawLine(x, plot.y, x, bottom);
		}
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawLine(plot.x, bottom, plot.x + plot.width, bottom);
		paper.gc.drawLine(plot.x, plot.y, plot.x, bottom);
		for (int t = 0; t < frame.xTicks().size(); t++) {
			int x = (int) Math.round(frame.xOf(frame.xTicks().value(t)));
			paper.gc.setForeground(new Color(paper.look.line()));
			paper.gc.drawLine(x, bottom, x, bottom + paper.gap / 2);
			paper.textAround(frame.xTicks().label(t), x, bottom + paper.gap / 2 + 1, paper.look.muted());
		}
		for (int t = 0; t < frame.yTicks().size(); t++) {
			int y = (int) Math.round(frame.yOf(frame.yTicks().value(t)));
			paper.textBefore(frame.yTicks().label(t), plot.x - paper.gap, y - paper.line / 2, paper.look.muted());
		}
		paper.text(yAxis.heading(), paper.gap, plot.y - paper.line - paper.gap / 2, paper.look.foreground());
		paper.textBefore(xAxis.heading(), plot.x + plot.width, bottom + paper.gap + paper.line,
				paper.look.foreground());
	}
}
