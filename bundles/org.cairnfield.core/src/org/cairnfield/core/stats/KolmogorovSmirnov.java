package org.cairnfield.core.stats;

import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;

/**
 * Whether two sets of values come from one distribution: the two-sample test of Kolmogorov and Smirnov. Values that
 * tie, as whole dBm do, make it conservative: it rejects less often than it may.
 */
public final class KolmogorovSmirnov {

	private KolmogorovSmirnov() {
	}

	/**
	 * The largest difference of the two empirical distribution functions, 0 … 1; NaN where a set has fewer than two
	 * values.
	 */
	public static double statistic(double[] a, double[] b) {
		return a.length < 2 || b.length < 2 ? Double.NaN : new KolmogorovSmirnovTest().kolmogorovSmirnovStatistic(a, b);
	}

	/**
	 * What the statistic must exceed to reject at level α: √(−ln(α/2)/2) · √((n + m)/(n·m)), the large-sample form.
	 *
	 * @param alpha between 0 and 1
	 */
	public static double critical(int n, int m, double alpha) {
		if (!(alpha > 0 && alpha < 1) || n < 1 || m < 1) {
			throw new IllegalArgumentException("no critical value for " + n + ", " + m + ", " + alpha);
		}
		return Math.sqrt(-Math.log(alpha / 2) / 2) * Math.sqrt(((double) n + m) / ((double) n * m));
	}

	/** Whether the two sets differ at level α. */
	public static boolean differ(double[] a, double[] b, double alpha) {
		return statistic(a, b) > critical(Math.max(1, a.length), Math.max(1, b.length), alpha);
	}
}
