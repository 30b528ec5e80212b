package org.cairnfield.ui.plan.internal.geometry;

import java.util.Arrays;
import java.util.BitSet;

import org.cairnfield.core.geometry.Polygon;

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

	/** The points inside, by the even–odd rule. */
	public BitSet inside(PointGrid grid, double[] xMetres, double[] yMetres, Camera camera) {
		BitSet found = new BitSet(xMetres.length);
		if (size < 3) {
			return found;
		}
		Polygon line = new Polygon(Arrays.copyOf(columns, size), Arrays.copyOf(rows, size));
		Bounds bounds = Bounds.EMPTY;
		for (int i = 0; i < size; i++) {
			bounds = bounds.with(camera.xMetres(columns[i]), camera.yMetres(rows[i]));
		}
		grid.within(bounds, i -> {
			if (line.contains(camera.column(xMetres[i]), camera.row(yMetres[i]))) {
				found.set(i);
			}
		});
		return found;
	}
}
