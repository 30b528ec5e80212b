package org.cairnfield.core.reduce;

import org.cairnfield.core.task.Workers;

/** Means and covariance (divisor n - 1) of the columns of a matrix. */
record ColumnMoments(double[] means, double[][] covariance) {

	/**
	 * From sums over what rows hold: the time grows with the square of the entries a row has, not with the
	 * columns. Values are meant to be small numbers of either sign; ones with a huge common offset would lose
	 * digits and belong in {@link #dense}.
	 */
	static ColumnMoments sparse(SparseRows rows, Workers workers) {
		int p = rows.columns();
		int n = rows.size();
		double[] means = new double[p];
		double[][] products = new double[p][];
		for (int i = 0; i < p; i++) {
			products[i] = new double[p];
		}
		workers.progress().begin("covariance", n);
		// On one thread: so short beside the decomposition that sharing it out would not be felt.
		Workers.inline().reportingTo(workers.progress()).forRanges(n, () -> (from, to) -> {
			for (int row = from; row < to; row++) {
				add(rows, row, means, products);
			}
		});
		for (int j = 0; j < p; j++) {
			means[j] /= n;
		}
		for (int i = 0; i < p; i++) {
			for (int j = i; j < p; j++) {
				// An entry pair was added on whichever side came first in the row.
				double sum = i == j ? products[i][i] : products[i][j] + products[j][i];
				double value = (sum - n * means[i] * means[j]) / (n - 1);
				products[i][j] = value;
				products[j][i] = value;
			}
		}
		return new ColumnMoments(means, products);
	}

	private static void add(SparseRows rows, int row, double[] sums, double[][] products) {
		int end = rows.end(row);
		for (int a = rows.start(row); a < end; a++) {
			double value = rows.value(a);
			int column = rows.column(a);
			sums[column] += value;
			double[] line = products[column];
			for (int b = a; b < end; b++) {
				line[rows.column(b)] += value * rows.value(b);
			}
		}
	}

	/** Of centred values, so that a large common offset does no harm. */
	static ColumnMoments dense(double[][] rows) {
		int n = rows.length;
		int p = rows[0].length;
		double[] means = new double[p];
		for (double[] row : rows) {
			for (int j = 0; j < p; j++) {
				means[j] += row[j] / n;
			}
		}
		double[][] covariance = new double[p][p];
		for (double[] row : rows) {
			for (int i = 0; i < p; i++) {
				double deviation = row[i] - means[i];
				for (int j = 0; j < p; j++) {
					covariance[i][j] += deviation * (row[j] - means[j]) / (n - 1);
				}
			}
		}
		return new ColumnMoments(means, covariance);
	}
}
