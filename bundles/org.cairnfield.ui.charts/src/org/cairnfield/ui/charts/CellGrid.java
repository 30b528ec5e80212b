package org.cairnfield.ui.charts;

/**
 * A value for each pair of two parameters. What its methods return belongs to it and is not to be changed.
 *
 * @param xs     parameter from left to right, ascending
 * @param ys     parameter from bottom to top, ascending
 * @param values by y, then x; NaN where there is none yet
 */
public record CellGrid(double[] xs, double[] ys, double[][] values) {

	/**
	 * Copies its arguments.
	 *
	 * @throws IllegalArgumentException where the shapes do not agree
	 */
	public CellGrid {
		xs = xs.clone();
		ys = ys.clone();
		if (values.length != ys.length) {
			throw new IllegalArgumentException(ys.length + " rows, values of " + values.length);
		}
		double[][] copy = new double[values.length][];
		for (int y = 0; y < copy.length; y++) {
			if (values[y].length != xs.length) {
				throw new IllegalArgumentException(xs.length + " columns, but " + values[y].length + " in row " + y);
			}
			copy[y] = values[y].clone();
		}
		values = copy;
	}

	/** How many cells. */
	public int size() {
		return xs.length * ys.length;
	}

	/** Column of a cell; cells are numbered from left to right, then from bottom to top. */
	public int column(int cell) {
		return cell % xs.length;
	}

	/** Row of a cell, from the bottom. */
	public int row(int cell) {
		return cell / xs.length;
	}

	/** The cell there. */
	public int cell(int column, int row) {
		return row * xs.length + column;
	}

	/** NaN where there is none yet. */
	public double value(int cell) {
		return values[row(cell)][column(cell)];
	}
}
