package org.cairnfield.curation.internal.rules.coverage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.map.RadioMap;

/** A floor cut into square cells, from the lower left corner of its outline. */
final class Cells {

	private final double side;
	private final double x0;
	private final double y0;
	private final int columns;
	private final int rows;
	private final boolean[] far;

	/** Marks the cells whose middle is within the outline and farther than {@code metres} from any sample. */
	Cells(RadioMap map, Polygon outline, double side, double metres) {
		this.side = side;
		double[] bounds = outline.bounds();
		x0 = bounds[0];
		y0 = bounds[1];
		columns = (int) Math.ceil((bounds[2] - x0) / side) + 1;
		rows = (int) Math.ceil((bounds[3] - y0) / side) + 1;
		far = new boolean[columns * rows];
		for (int r = 0; r < rows; r++) {
			for (int c = 0; c < columns; c++) {
				far[r * columns + c] = outline.contains(middle(x0, c), middle(y0, r));
			}
		}
		for (int s = 0; s < map.size(); s++) {
			cover(map.x(s), map.y(s), metres);
		}
	}

	private double middle(double origin, int index) {
		return origin + (index + 0.5) * side;
	}

	private void cover(double x, double y, double metres) {
		int fromColumn = Math.max(0, (int) Math.floor((x - metres - x0) / side));
		int toColumn = Math.min(columns - 1, (int) Math.floor((x + metres - x0) / side));
		int fromRow = Math.max(0, (int) Math.floor((y - metres - y0) / side));
		int toRow = Math.min(rows - 1, (int) Math.floor((y + metres - y0) / side));
		for (int r = fromRow; r <= toRow; r++) {
			for (int c = fromColumn; c <= toColumn; c++) {
				if (far[r * columns + c] && Math.hypot(middle(x0, c) - x, middle(y0, r) - y) <= metres) {
					far[r * columns + c] = false;
				}
			}
		}
	}

	/** Marked cells joined where they touch by a side, each {column, row}; row by row. */
	List<List<int[]>> gaps() {
		List<List<int[]>> gaps = new ArrayList<>();
		boolean[] seen = new boolean[far.length];
		for (int start = 0; start < far.length; start++) {
			if (!far[start] || seen[start]) {
				continue;
			}
			List<int[]> gap = new ArrayList<>();
			ArrayDeque<Integer> open = new ArrayDeque<>(List.of(start));
			seen[start] = true;
			while (!open.isEmpty()) {
				int cell = open.remove();
				int c = cell % columns;
				int r = cell / columns;
				gap.add(new int[] { c, r });
				visit(c > 0, cell - 1, seen, open);
				visit(c < columns - 1, cell + 1, seen, open);
				visit(r > 0, cell - columns, seen, open);
				visit(r < rows - 1, cell + columns, seen, open);
			}
			gaps.add(gap);
		}
		return gaps;
	}

	private void visit(boolean exists, int cell, boolean[] seen, ArrayDeque<Integer> open) {
		if (exists && far[cell] && !seen[cell]) {
			seen[cell] = true;
			open.add(cell);
		}
	}
}
