package org.cairnfield.core.stats;

import java.io.Serializable;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.inference.WilcoxonSignedRankTest;

/**
 * Wilcoxon's signed-rank test of pairs (F. Wilcoxon, "Individual comparisons by ranking methods", Biometrics Bulletin 1, 1945): whether
 * differences lie evenly about 0. Pairs without a difference are left out, as Wilcoxon did; equal differences share their ranks.
 *
 * @param pairs   that differ
 * @param below   sum of the ranks of pairs whose first value is smaller
 * @param above   sum of the ranks of the others
 * @param p       two-sided; exact for up to {@value #MOST_EXACT} pairs, by the normal approximation above; NaN for no pair
 */
public record SignedRank(int pairs, double below, double above, double p) implements Serializable {

	/** All signs are gone through up to so many pairs: a million ways. */
	public static final int MOST_EXACT = 20;

	/**
	 * Tests pairs.
	 *
	 * @param first  finite values
	 * @param second as many, in the same unit
	 * @throws IllegalArgumentException where the lengths differ
	 */
	public static SignedRank of(double[] first, double[] second) {
		if (first.length != second.length) {
			throw new IllegalArgumentException("lengths differ: " + first.length + " and " + second.length);
		}
		int[] differing = IntStream.range(0, first.length).filter(i -> first[i] != second[i]).toArray();
		int n = differing.length;
		if (n == 0) {
			return new SignedRank(0, 0, 0, Double.NaN);
		}
		double[] a = IntStream.of(differing).mapToDouble(i -> first[i]).toArray();
		double[] b = IntStream.of(differing).mapToDouble(i -> second[i]).toArray();
		WilcoxonSignedRankTest test = new WilcoxonSignedRankTest();
		double larger = test.wilcoxonSignedRank(a, b);
		double smaller = n * (n + 1) / 2.0 - larger;
		boolean above = sumAbove(a, b) > smaller;
		// with equal rank sums both tails are counted twice
		double p = Math.min(1, test.wilcoxonSignedRankTest(a, b, n <= MOST_EXACT));
		return new SignedRank(n, above ? smaller : larger, above ? larger : smaller, p);
	}

	/** Of pairs whose first value is larger: half the ranks of equals count for each. */
	private static double sumAbove(double[] a, double[] b) {
		double sum = 0;
		for (int i = 0; i < a.length; i++) {
			if (a[i] > b[i]) {
				for (int j = 0; j < a.length; j++) {
					int by = Double.compare(Math.abs(a[i] - b[i]), Math.abs(a[j] - b[j]));
					sum += by > 0 ? 1 : by == 0 ? 0.5 : 0;
				}
				sum += 0.5;
			}
		}
		return sum;
	}
}
