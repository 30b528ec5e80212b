package org.cairnfield.core.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which of many tests to believe so that of those believed only a small share is wrong on average: the step-up procedure of
 * Benjamini and Hochberg (1995), Journal of the Royal Statistical Society B 57, 289–300.
 */
public final class FalseDiscovery {

	private FalseDiscovery() {
	}

	/**
	 * @param p    of each test, 0 … 1
	 * @param rate the share of wrong ones among those believed, 0 … 1
	 * @return by test, whether to believe that there is something
	 */
	public static boolean[] believed(double[] p, double rate) {
		Integer[] order = IntStream.range(0, p.length).boxed().sorted(Comparator.comparingDouble(i -> p[i]))
				.toArray(Integer[]::new);
		int last = -1;
		for (int i = 0; i < order.length; i++) {
			if (p[order[i]] <= rate * (i + 1) / p.length) {
				last = i;
			}
		}
		boolean[] believed = new boolean[p.length];
		Arrays.stream(order, 0, last + 1).forEach(i -> believed[i] = true);
		return believed;
	}
}
