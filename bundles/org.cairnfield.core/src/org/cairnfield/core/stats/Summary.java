package org.cairnfield.core.stats;

import java.io.Serializable;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Count, mean, spread and range of a sample, in the unit of its values. Mean and standard deviation are
 * computed in two passes, so values far from zero with a small spread lose no digits.
 *
 * @param n    how many values
 * @param mean NaN where there are none
 * @param sd   standard deviation with divisor n - 1; NaN for fewer than two values
 * @param min  NaN where there are none
 * @param max  NaN where there are none
 */
public record Summary(int n, double mean, double sd, double min, double max) implements Serializable {

	/** Sums up the values; a NaN among them makes mean and spread NaN. */
	public static Summary of(double[] values) {
		double mean = StatUtils.mean(values);
		double sd = values.length < 2 ? Double.NaN : Math.sqrt(StatUtils.variance(values, mean));
		return new Summary(values.length, mean, sd, StatUtils.min(values), StatUtils.max(values));
	}
}
