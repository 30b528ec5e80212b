package org.cairnfield.core.reduce;

import org.cairnfield.core.task.Workers;

/**
 * The factor L of a symmetric positive definite matrix L·Lᵀ (Golub, Van Loan, "Matrix Computations", 4.2). n³/6 steps.
 *
 * @param lower by row, of the row's own length
 */
record Cholesky(double[][] lower) {

	/**
	 * Reads the lower triangle; advances by a row at a time.
	 *
	 * @throws IllegalArgumentException where the matrix is not positive definite
	 */
	static Cholesky of(double[][] matrix, Workers workers) {
		int n = matrix.length;
		double[][] lower = new double[n][];
		for (int i = 0; i < n; i++) {
			workers.checkCancelled();
			double[] row = new double[i + 1];
			for (int j = 0; j < i; j++) {
				row[j] = (matrix[i][j] - Dense.dot(row, lower[j], j)) / lower[j][j];
			}
			double square = matrix[i][i] - Dense.dot(row, row, i);
			if (!(square > 0)) {
				throw new IllegalArgumentException(
						"the matrix is not positive definite; at row " + i + " of " + n + " nothing is left");
			}
			row[i] = Math.sqrt(square);
			lower[i] = row;
			workers.progress().advance(1);
		}
		return new Cholesky(lower);
	}

	/** L⁻¹·b, in place. */
	void solveLower(double[] b) {
		for (int i = 0; i < lower.length; i++) {
			b[i] = (b[i] - Dense.dot(lower[i], b, i)) / lower[i][i];
		}
	}

	/** (L·Lᵀ)⁻¹·b, in place. */
	void solve(double[] b) {
		solveLower(b);
		for (int i = lower.length - 1; i >= 0; i--) {
			double[] row = lower[i];
			b[i] /= row[i];
			for (int j = 0; j < i; j++) {
				b[j] -= row[j] * b[i];
			}
		}
	}

	/** (L·Lᵀ)⁻¹; advances by a row at a time. */
	double[][] inverse(Workers workers) {
		int n = lower.length;
		double[][] inverse = new double[n][n];
		workers.forRanges(n, () -> (from, to) -> {
			for (int i = from; i < to; i++) {
				inverse[i][i] = 1;
				solve(inverse[i]);
			}
		});
		return inverse;
	}

	/** log |L·Lᵀ|. */
	double logDeterminant() {
		double sum = 0;
		for (int i = 0; i < lower.length; i++) {
			sum += 2 * Math.log(lower[i][i]);
		}
		return sum;
	}
}
