package org.cairnfield.core.geometry;

/**
 * A short way past some points, from one end to another: to the nearest point left, then parts turned round as long as that makes
 * it shorter (2-opt; Croes, "A method for solving traveling-salesman problems", 1958). Not always the shortest there is.
 */
public final class ShortWalk {

	private static final double LEAST_GAIN_METRES = 1e-9;
	private static final int MOST_ROUNDS = 50;

	private ShortWalk() {
	}

	/**
	 * The order in which to visit points; takes time by the square of their number.
	 *
	 * @param xMetres positions, as long as {@code yMetres}
	 */
	public static int[] order(double[] xMetres, double[] yMetres) {
		int[] order = nearestFirst(xMetres, yMetres);
		boolean shorter = true;
		for (int round = 0; shorter && round < MOST_ROUNDS; round++) {
			shorter = false;
			for (int from = 0; from < order.length - 1; from++) {
				for (int to = from + 1; to < order.length; to++) {
					double gain = step(xMetres, yMetres, order, from - 1, from)
							+ step(xMetres, yMetres, order, to, to + 1)
							- step(xMetres, yMetres, order, from - 1, to) - step(xMetres, yMetres, order, from, to + 1);
					if (gain > LEAST_GAIN_METRES) {
						turn(order, from, to);
						shorter = true;
					}
				}
			}
		}
		return order;
	}

	/** How long a walk is, in metres. */
	public static double metres(double[] xMetres, double[] yMetres, int[] order) {
		double sum = 0;
		for (int i = 1; i < order.length; i++) {
			sum += step(xMetres, yMetres, order, i - 1, i);
		}
		return sum;
	}

	/** From the lower left on. */
	private static int[] nearestFirst(double[] x, double[] y) {
		int[] order = new int[x.length];
		boolean[] visited = new boolean[x.length];
		for (int i = 0; i < order.length; i++) {
			int next = -1;
			double least = Double.POSITIVE_INFINITY;
			for (int p = 0; p < x.length; p++) {
				double metres = i == 0 ? x[p] + y[p] : Math.hypot(x[p] - x[order[i - 1]], y[p] - y[order[i - 1]]);
				if (!visited[p] && (next < 0 || metres < least)) {
					next = p;
					least = metres;
				}
			}
			order[i] = next;
			visited[next] = true;
		}
		return order;
	}

	/** 0 beyond either end, for the walk is open. */
	private static double step(double[] x, double[] y, int[] order, int a, int b) {
		return a < 0 || b >= order.length ? 0 : Math.hypot(x[order[a]] - x[order[b]], y[order[a]] - y[order[b]]);
	}

	private static void turn(int[] order, int from, int to) {
		for (int a = from, b = to; a < b; a++, b--) {
			int kept = order[a];
			order[a] = order[b];
			order[b] = kept;
		}
	}
}
