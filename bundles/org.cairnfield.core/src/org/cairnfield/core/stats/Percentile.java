package org.cairnfield.core.stats;

import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;

/**
 * Percentiles. One rule serves the whole product, {@link Rule#HYNDMAN_FAN_6}; the others exist to show
 * how far the answer depends on the rule, which for small samples is much: always report n with it.
 */
public final class Percentile {

	/**
	 * Which value a percentile p of n sorted values is; numbered as by Hyndman &amp; Fan, "Sample quantiles
	 * in statistical packages", The American Statistician 50 (1996).
	 */
	public enum Rule {
		/** At place p(n + 1), interpolated; the rule of the NIST/SEMATECH e-Handbook, 7.2.6.2. */
		HYNDMAN_FAN_6("Hyndman-Fan 6", EstimationType.R_6),
		/** At place p(n - 1) + 1, interpolated; the "inclusive" rule of spreadsheets. */
		HYNDMAN_FAN_7("Hyndman-Fan 7", EstimationType.R_7),
		/** At place ⌈pn⌉, always one of the values; Hyndman-Fan 1. */
		NEAREST_RANK("nearest rank", EstimationType.R_1);

		private final String title;
		private final EstimationType type;

		Rule(String title, EstimationType type) {
			this.title = title;
			this.type = type;
		}

		/** The name for reports. */
		public String title() {
			return title;
		}
	}

	/** The rule of every percentile that the product reports. */
	public static final Rule RULE = Rule.HYNDMAN_FAN_6;

	private Percentile() {
	}

	/** The percentile by {@link #RULE}; see {@link #of(Rule, double[], double...)}. */
	public static double of(double[] values, double percent) {
		return of(RULE, values, percent)[0];
	}

	/**
	 * Several percentiles of the same values.
	 *
	 * @param values   in any order, left as they are
	 * @param percents each above 0 and at most 100
	 * @return one for each of {@code percents}, in the unit of the values; NaN where there are no values
	 * @throws IllegalArgumentException for a NaN among the values, or a percent out of range
	 */
	public static double[] of(Rule rule, double[] values, double... percents) {
		for (double value : values) {
			if (Double.isNaN(value)) {
				throw new IllegalArgumentException("no percentile of values that include NaN");
			}
		}
		var percentile = new org.apache.commons.math3.stat.descriptive.rank.Percentile()
				.withEstimationType(rule.type);
		percentile.setData(values);
		double[] result = new double[percents.length];
		for (int i = 0; i < result.length; i++) {
			if (!(percents[i] > 0 && percents[i] <= 100)) {
				throw new IllegalArgumentException("percent must be above 0 and at most 100, was " + percents[i]);
			}
			result[i] = values.length == 0 ? Double.NaN : percentile.evaluate(percents[i]);
		}
		return result;
	}
}
