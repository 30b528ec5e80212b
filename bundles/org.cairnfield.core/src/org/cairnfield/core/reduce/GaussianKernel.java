package org.cairnfield.core.reduce;

import org.cairnfield.core.stats.Median;

/** Squared Euclidean distances of rows, and the kernel exp(−d² / 2σ²) of them. */
final class GaussianKernel {

	private GaussianKernel() {
	}

	/** Of some of the rows. */
	static double[][] squares(SparseRows rows, int[] some) {
		double[][] squares = new double[some.length][some.length];
		double[] dense = new double[rows.columns()];
		double[] length = new double[some.length];
		for (int i = 0; i < some.length; i++) {
			for (int k = rows.start(some[i]); k < rows.end(some[i]); k++) {
				dense[rows.column(k)] = rows.value(k);
				length[i] += rows.value(k) * rows.value(k);
			}
			for (int j = 0; j < i; j++) {
				double product = 0;
				for (int k = rows.start(some[j]); k < rows.end(some[j]); k++) {
					product += rows.value(k) * dense[rows.column(k)];
				}
				squares[i][j] = Math.max(0, length[i] + length[j] - 2 * product);
				squares[j][i] = squares[i][j];
			}
			for (int k = rows.start(some[i]); k < rows.end(some[i]); k++) {
				dense[rows.column(k)] = 0;
			}
		}
		return squares;
	}

	/** Of full rows. */
	static double[][] squares(double[][] rows) {
		double[][] squares = new double[rows.length][rows.length];
		for (int i = 0; i < rows.length; i++) {
			for (int j = 0; j < i; j++) {
				squares[i][j] = square(rows[i], rows[j]);
				squares[j][i] = squares[i][j];
			}
		}
		return squares;
	}

	static double square(double[] a, double[] b) {
		double sum = 0;
		for (int c = 0; c < a.length; c++) {
			sum += (a[c] - b[c]) * (a[c] - b[c]);
		}
		return sum;
	}

	/** The median distance of two different rows; 1 where more than half of them are equal, as any width does then. */
	static double medianDistance(double[][] squares) {
		double[] pairs = new double[squares.length * (squares.length - 1) / 2];
		int count = 0;
		for (int i = 0; i < squares.length; i++) {
			System.arraycopy(squares[i], 0, pairs, count, i);
			count += i;
		}
		double median = Math.sqrt(Median.ofFirst(pairs, count));
		return median > 0 ? median : 1;
	}

	static double of(double square, double width) {
		return Math.exp(-square / (2 * width * width));
	}

	/** Makes the kernel of each square in its place. */
	static double[][] inPlace(double[][] squares, double width) {
		for (double[] row : squares) {
			for (int j = 0; j < row.length; j++) {
				row[j] = of(row[j], width);
			}
		}
		return squares;
	}
}
