package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: the first column to the left, the others to the right. */
final class ConsoleTable {

	private final List<String[]> rows = new ArrayList<>();

	ConsoleTable(String... header) {
		rows.add(header);
	}

	void row(String... cells) {
		rows.add(cells);
	}

	void print(PrintWriter out) {
		int[] width = new int[rows.get(0).length];
		for (String[] row : rows) {
			for (int c = 0; c < row.length; c++) {
				width[c] = Math.max(width[c], row[c].length());
			}
		}
		for (String[] row : rows) {
			StringBuilder line = new StringBuilder();
			for (int c = 0; c < row.length; c++) {
				String gap = " ".repeat(width[c] - row[c].length());
				line.append(c == 0 ? row[c] + gap : "  " + gap + row[c]);
			}
			out.println(line.toString().stripTrailing());
		}
	}
}
