package org.cairnfield.core.reduce;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Eigenvectors of a symmetric matrix without negative eigenvalues, in order of falling eigenvalue. The weight of largest size in each
 * is positive, so the same data give the same signs.
 *
 * @param values  what is below 0 by rounding is 0
 * @param vectors by row of the matrix, then vector
 */
record Eigenvectors(double[] values, double[][] vectors) {

	/** @param matrix may be overwritten */
	static Eigenvectors of(double[][] matrix) {
		int p = matrix.length;
		EigenDecomposition found = new EigenDecomposition(new Array2DRowRealMatrix(matrix, false));
		double[] unordered = found.getRealEigenvalues();
		int[] order = IntStream.range(0, p).boxed()
				.sorted((a, b) -> Double.compare(unordered[b], unordered[a])).mapToInt(i -> i).toArray();
		double[] values = Arrays.stream(order).mapToDouble(i -> Math.max(0, unordered[i])).toArray();
		double[][] vectors = new double[p][p];
		for (int c = 0; c < p; c++) {
			double[] vector = found.getEigenvector(order[c]).toArray();
			double sign = signOfLargest(vector);
			for (int j = 0; j < p; j++) {
				vectors[j][c] = sign * vector[j];
			}
		}
		return new Eigenvectors(values, vectors);
	}

	private static double signOfLargest(double[] vector) {
		double largest = 0;
		for (double weight : vector) {
			// Not by a hair: of two equal sizes the first decides, whatever rounding does to them.
			if (Math.abs(weight) > Math.abs(largest) * (1 + 1e-9)) {
				largest = weight;
			}
		}
		return largest < 0 ? -1 : 1;
	}
}
