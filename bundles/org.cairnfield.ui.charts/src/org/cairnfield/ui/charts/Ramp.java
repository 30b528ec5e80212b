package org.cairnfield.ui.charts;

import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.charts.scale.Scale;
import org.cairnfield.ui.charts.scale.Ticks;

/** Draws a strip of colours with the values that they mean. */
record Ramp(Continuous colours, Axis axis, Scale scale) {

	static int height(Paper paper) {
		return 2 * paper.line + paper.gap;
	}

	void draw(Paper paper, int left, int top, int wide) {
		int strip = paper.line * 2 / 3;
		String heading = axis.heading();
		int ends = paper.width(scale.ticks(2).label(0)) + paper.gap;
		int from = left + paper.width(heading) + 2 * paper.gap;
		int room = Math.min(wide - (from - left) - ends, 16 * paper.line);
		if (room < 3 * paper.line) {
			return;
		}
		paper.text(heading, left, top, paper.look.muted());
		for (int x = 0; x < room; x++) {
			paper.fill(colours.rgb(x / (double) (room - 1)));
			paper.gc.fillRectangle(from + x, top + (paper.line - strip) / 2, 1, strip);
		}
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawRectangle(from, top + (paper.line - strip) / 2, room - 1, strip - 1);
		Ticks ticks = scale.ticks(Math.max(2, room / (4 * paper.line)));
		if (ticks.size() < 2) {
			int decimals = scale.ticks(4).readoutDecimals();
			label(paper, from, top, ShownNumbers.text(scale.low(), decimals));
			label(paper, from + room - 1, top, ShownNumbers.text(scale.high(), decimals));
			return;
		}
		for (int t = 0; t < ticks.size(); t++) {
			label(paper, from + (int) Math.round(scale.fraction(ticks.value(t)) * (room - 1)), top, ticks.label(t));
		}
	}

	private static void label(Paper paper, int x, int top, String text) {
		paper.textAround(text, x, top + paper.line + paper.gap / 2, paper.look.muted());
	}
}
