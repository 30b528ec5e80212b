package org.cairnfield.core.surface;

/**
 * Values in square cells of a floor.
 *
 * @param leftMetres   x of the left edge
 * @param bottomMetres y of the lower edge
 * @param sideMetres   of a cell
 * @param columns      cells across
 * @param rows         cells up
 * @param values       by row from below, then by column; NaN where nothing can be said
 * @param reachMetres  how far from a place that is known something is said
 * @param error        mean absolute error where a known place is left out and told from the others, in units of the values; NaN
 *                     where that is not asked or no place has others near
 */
public record Surface(double leftMetres, double bottomMetres, double sideMetres, int columns, int rows, double[] values,
		double reachMetres,
		double error) {

	/** Of one cell. */
	public double value(int column, int row) {
		return values[row * columns + column];
	}

	/** The largest value; NaN where there is none. */
	public double highest() {
		double highest = Double.NaN;
		for (double value : values) {
			highest = Double.isNaN(highest) || value > highest ? Double.isNaN(value) ? highest : value : highest;
		}
		return highest;
	}
}
