package org.cairnfield.ui.plan.internal.geometry;

import java.util.function.IntConsumer;

/** Points sorted into square cells, so that those near a place are found without looking at all. Immutable. */
public final class PointGrid {

	private static final double POINTS_A_CELL = 4;
	private static final int MOST_CELLS = 1 << 18;

	private final double[] x;
	private final double[] y;
	private final Bounds bounds;
	private final double cell;
	private final int columns;
	private final int rows;
	private final int[] first;
	private final int[] points;

	/** @param x metres, kept, not copied */
	public PointGrid(double[] x, double[] y) {
		this.x = x;
		this.y = y;
		Bounds all = Bounds.EMPTY;
		for (int i = 0; i < x.length; i++) {
			all = all.with(x[i], y[i]);
		}
		bounds = all.isEmpty() ? new Bounds(0, 0, 0, 0) : all;
		double area = Math.max(bounds.width(), 1e-3) * Math.max(bounds.height(), 1e-3);
		double side = Math.sqrt(area * POINTS_A_CELL / Math.max(1, x.length));
		side = Math.max(side, Math.max(bounds.width(), bounds.height()) / Math.sqrt(MOST_CELLS));
		cell = Math.max(side, 1e-3);
		columns = (int) (bounds.width() / cell) + 1;
		rows = (int) (bounds.height() / cell) + 1;
		first = new int[columns * rows + 1];
		points = new int[x.length];
		for (int i = 0; i < x.length; i++) {
			first[cellOf(i) + 1]++;
		}
		for (int c = 0; c < columns * rows; c++) {
			first[c + 1] += first[c];
		}
		int[] next = first.clone();
		for (int i = 0; i < x.length; i++) {
			points[next[cellOf(i)]++] = i;
		}
	}

	/** Of all points; one at the origin where there are none. */
	public Bounds bounds() {
		return bounds;
	}

	private int cellOf(int i) {
		return rowOf(y[i]) * columns + columnOf(x[i]);
	}

	private int columnOf(double at) {
		return (int) Math.max(0, Math.min(columns - 1, (at - bounds.left()) / cell));
	}

	private int rowOf(double at) {
		return (int) Math.max(0, Math.min(rows - 1, (at - bounds.bottom()) / cell));
	}

	/** Every point within a rectangle, in no certain order. */
	public void within(Bounds wanted, IntConsumer found) {
		if (wanted.isEmpty() || wanted.right() < bounds.left() || wanted.left() > bounds.right()
				|| wanted.top() < bounds.bottom() || wanted.bottom() > bounds.top()) {
			return;
		}
		int lastColumn = columnOf(wanted.right());
		int lastRow = rowOf(wanted.top());
		for (int r = rowOf(wanted.bottom()); r <= lastRow; r++) {
			for (int c = columnOf(wanted.left()); c <= lastColumn; c++) {
				for (int k = first[r * columns + c]; k < first[r * columns + c + 1]; k++) {
					if (wanted.contains(x[points[k]], y[points[k]])) {
						found.accept(points[k]);
					}
				}
			}
		}
	}

	/** The nearest point within a distance; of several as near the one with the highest number, which is drawn on top; or -1. */
	public int nearest(double atX, double atY, double withinMetres) {
		int[] best = { -1 };
		double[] least = { withinMetres };
		within(new Bounds(atX, atY, atX, atY).grown(withinMetres), i -> {
			double distance = Math.hypot(x[i] - atX, y[i] - atY);
			if (distance < least[0] || distance == least[0] && i > best[0]) {
				least[0] = distance;
				best[0] = i;
			}
		});
		return best[0];
	}
}
