package org.cairnfield.benchmarks;

/** Plain loops over full vectors, to check against. */
final class Dense {

	private Dense() {
	}

	static double cityBlock(double[] a, double[] b) {
		double sum = 0;
		for (int i = 0; i < a.length; i++) {
			sum += Math.abs(a[i] - b[i]);
		}
		return sum;
	}
}
