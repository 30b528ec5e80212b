package org.cairnfield.ui.charts;

import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Series;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Contrast;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;

/** Draws what is inside the axes of a line chart. */
record LinePainter(Paper paper, Frame frame, List<Series> series, boolean stepped) {

	/** How near, in points, the mouse must be to take hold of something. */
	static final int REACH = 6;

	/** Shapes along a line, to tell it from others without its colour. */
	private static final int SHAPES = 6;

	List<Legend.Entry> entries() {
		return IntStream.range(0, series.size())
				.mapToObj(i -> Legend.Entry.line(series.get(i).name(), Categorical.style(i))).toList();
	}

	void draw(double xFactor, double yFactor) {
		Rectangle plot = frame.plot();
		for (int i = 0; i < series.size(); i++) {
			paper.gc.setClipping(plot.x, plot.y - 1, plot.width + 1, plot.height + 2);
			Categorical.Style style = Categorical.style(i);
			RGB rgb = style.colour().on(paper.look.background());
			Polyline thin = Polyline.of(series.get(i), xFactor, yFactor, frame.x(), frame.y(), plot);
			(stepped ? thin.stepped() : thin).draw(paper, rgb);
			paper.gc.setClipping((Rectangle) null);
			if (series.size() > 1) {
				drawShapes(thin, style, rgb, (i + 0.5) / series.size());
			}
		}
	}

	/** Shapes at even distances along x, each line's shifted against the others'. */
	private void drawShapes(Polyline thin, Categorical.Style style, RGB rgb, double shift) {
		Rectangle plot = frame.plot();
		double pitch = plot.width / (double) SHAPES;
		double next = plot.x + shift * pitch;
		for (int i = 0; i + 1 < thin.size(); i++) {
			if (thin.isGap(i) || thin.isGap(i + 1)) {
				continue;
			}
			while (next <= thin.x(i + 1)) {
				if (next >= thin.x(i) && next <= plot.x + plot.width) {
					double along = (next - thin.x(i)) / Math.max(1e-6, thin.x(i + 1) - thin.x(i));
					double y = stepped ? thin.y(i) : thin.y(i) + along * (thin.y(i + 1) - thin.y(i));
					if (y >= plot.y && y <= plot.y + plot.height) {
						paper.marker(style.marker(), next, y, paper.line * 0.26, rgb);
					}
				}
				next += pitch;
			}
		}
	}

	void drawMarks(List<Mark> marks, double xFactor, double yFactor) {
		for (Mark mark : marks) {
			int x = (int) Math.round(frame.xOf(mark.x() * xFactor));
			int y = (int) Math.round(frame.yOf(mark.y() * yFactor));
			if (!frame.plot().contains(x, y)) {
				continue;
			}
			paper.ring(x, y, paper.line * 0.35, paper.look.foreground());
			int wide = paper.width(mark.text());
			boolean left = x + paper.line + wide > frame.plot().x + frame.plot().width;
			label(mark.text(), left ? x - paper.gap * 2 - wide : x + paper.gap * 2, y + paper.gap);
		}
	}

	void drawGuide(boolean upright, double shown, String text, boolean focused) {
		Rectangle plot = frame.plot();
		paper.stroke(paper.look.foreground(), focused ? paper.line / 7f : paper.line / 12f);
		paper.gc.setLineStyle(SWT.LINE_DASH);
		if (upright) {
			int x = (int) Math.round(frame.xOf(shown));
			paper.gc.drawLine(x, plot.y, x, plot.y + plot.height);
			int wide = paper.width(text);
			label(text, Math.min(x + paper.gap, plot.x + plot.width - wide), plot.y);
		} else {
			int y = (int) Math.round(frame.yOf(shown));
			paper.gc.drawLine(plot.x, y, plot.x + plot.width, y);
			int above = y - paper.line - 2;
			label(text, plot.x + paper.gap, above < plot.y ? y + 2 : above);
		}
		paper.gc.setLineStyle(SWT.LINE_SOLID);
	}

	/** A hair line at x, and the texts in a box beside it. */
	void drawReadout(double shownX, List<String> lines) {
		if (lines.isEmpty()) {
			return;
		}
		Rectangle plot = frame.plot();
		int x = (int) Math.round(frame.xOf(shownX));
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawLine(x, plot.y, x, plot.y + plot.height);
		int wide = lines.stream().mapToInt(paper::width).max().orElse(0) + 2 * paper.gap;
		int high = lines.size() * paper.line + paper.gap;
		int left = x + paper.gap + wide > plot.x + plot.width ? x - paper.gap - wide : x + paper.gap;
		int top = plot.y + Math.max(0, (plot.height - high) / 2);
		paper.fill(Contrast.between(paper.look.background(), paper.look.foreground(), 0.04));
		paper.gc.fillRectangle(left, top, wide, high);
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawRectangle(left, top, wide, high);
		for (int i = 0; i < lines.size(); i++) {
			paper.text(lines.get(i), left + paper.gap, top + paper.gap / 2 + i * paper.line, paper.look.foreground());
		}
	}

	/** Text that stays legible over lines. */
	private void label(String text, int x, int y) {
		paper.fill(paper.look.background());
		paper.gc.setAlpha(215);
		paper.gc.fillRectangle(x - 2, y, paper.width(text) + 4, paper.line);
		paper.gc.setAlpha(255);
		paper.text(text, x, y, paper.look.foreground());
	}
}
