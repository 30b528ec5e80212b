package org.cairnfield.core.reduce;

/**
 * Describes a row by a few coordinates, the most telling first. A reduction is fitted to some rows and then projects any row with the
 * same columns, such as a query.
 */
public interface Reduction {

	/** How many columns a row has. */
	int columns();

	/**
	 * The first coordinates of a row.
	 *
	 * @param components how many, from 1 to {@link #columns}
	 */
	double[] scores(SparseRows rows, int row, int components);

	/** The first coordinates of all rows. */
	default double[][] scores(SparseRows rows, int components) {
		double[][] scores = new double[rows.size()][];
		for (int row = 0; row < scores.length; row++) {
			scores[row] = scores(rows, row, components);
		}
		return scores;
	}
}
