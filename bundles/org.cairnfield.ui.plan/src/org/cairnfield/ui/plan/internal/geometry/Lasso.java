package org.cairnfield.ui.plan.internal.geometry;

import java.util.Arrays;
import java.util.BitSet;

/** A free line round some points, in pixels, closed by a straight last side. */
public final class Lasso {

	private static final double LEAST_STEP = 2;

	private double[] columns = new double[64];
	private double[] rows = new double[64];
	private int size;

	/** Draws on to a pixel; steps too small to see are left out. */
	public void to(double column, double row) {
		if (size > 0 && Math.hypot(column - columns[size - 1], row - rows[size - 1]) < LEAST_STEP) {
			return;
		}
		if (size == columns.length) {
			columns = Arrays.copyOf(columns, 2 * size);
			rows = Arrays.copyOf(rows, 2 * size);
		}
		columns[size] = column;
		rows[size++] = row;
	}

	public int size() {
		return size;
	}

	/** Column, row, column, row … for drawing. */
	public int[] corners() {
		int[] corners = new int[2 * size];
		for (int i = 0; i < size; i++) {
			corners[2 * i] = (int) Math.round(columns[i]);
			corners[2 * i + 1] = (int) Math.round(rows[i]);
		}
		return corners;
	}

	/** Whether a pixel is inside, by the even–odd rule. */
	public boolean contains(double column, double row) {
		boolean inside = false;
		for (int i = 0, j = size - 1; i < size; j = i++) {
			if (rows[i] > row != rows[j] > row
					&& column < (columns[j] - columns[i]) * (row - rows[i]) / (rows[j] - rows[i]) + columns[i]) {
				inside = !inside;
			}
		}
		return inside;
	}

	/** The points inside. */
	public BitSet inside(PointGrid grid, double[] xMetres, double[] yMetres, Camera camera) {
		BitSet found = new BitSet(xMetres.length);
		Bounds bounds = Bounds.EMPTY;
		for (int i = 0; i < size; i++) {
			bounds = bounds.with(camera.xMetres(columns[i]), camera.yMetres(rows[i]));
		}
		grid.within(bounds, i -> {
			if (contains(camera.column(xMetres[i]), camera.row(yMetres[i]))) {
				found.set(i);
			}
		});
		return found;
	}
}
