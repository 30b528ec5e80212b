package org.cairnfield.core.reduce;

import org.cairnfield.core.task.Workers;

/** Products of full square matrices, large enough that it matters how memory is read. */
final class Dense {

	/** Rows of the right matrix that stay in the cache while a range of rows of the left one passes over them. */
	private static final int BLOCK = 64;

	private Dense() {
	}

	/** a·b; advances by a row at a time. */
	static double[][] multiply(double[][] a, double[][] b, Workers workers) {
		int n = a.length;
		double[][] product = new double[n][n];
		workers.forRanges(n, () -> (from, to) -> {
			for (int block = 0; block < n; block += BLOCK) {
				int end = Math.min(n, block + BLOCK);
				for (int i = from; i < to; i++) {
					for (int k = block; k < end; k++) {
						addMultiple(product[i], a[i][k], b[k]);
					}
				}
			}
		});
		return product;
	}

	private static void addMultiple(double[] to, double factor, double[] row) {
		for (int j = 0; j < to.length; j++) {
			to[j] += factor * row[j];
		}
	}

	/** Σ of the products of the first {@code count} numbers, in four sums that do not wait for each other. */
	static double dot(double[] a, double[] b, int count) {
		double s0 = 0;
		double s1 = 0;
		double s2 = 0;
		double s3 = 0;
		int k = 0;
		for (; k + 3 < count; k += 4) {
			s0 += a[k] * b[k];
			s1 += a[k + 1] * b[k + 1];
			s2 += a[k + 2] * b[k + 2];
			s3 += a[k + 3] * b[k + 3];
		}
		for (; k < count; k++) {
			s0 += a[k] * b[k];
		}
		return s0 + s1 + (s2 + s3);
	}
}
