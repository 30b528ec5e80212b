package org.cairnfield.ui.charts;

import java.util.List;

/** Puts pieces of different widths one after another, in as many lines as they need. */
final class Flow {

	private final int[] x;
	private final int[] line;

	/**
	 * @param widths of the pieces
	 * @param gap    between neighbours
	 * @param room   width of a line
	 */
	Flow(List<Integer> widths, int gap, int room) {
		x = new int[widths.size()];
		line = new int[widths.size()];
		int at = 0;
		int row = 0;
		for (int i = 0; i < x.length; i++) {
			if (at > 0 && at + widths.get(i) > room) {
				at = 0;
				row++;
			}
			x[i] = at;
			line[i] = row;
			at += widths.get(i) + gap;
		}
	}

	int x(int piece) {
		return x[piece];
	}

	/** From 0. */
	int line(int piece) {
		return line[piece];
	}

	int lines() {
		return line.length == 0 ? 0 : line[line.length - 1] + 1;
	}
}
