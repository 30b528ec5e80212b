package org.cairnfield.core.stats;

import java.io.Serializable;
import org.apache.commons.math3.random.MersenneTwister;

/**
 * How far a figure would move had other samples been drawn: the percentile interval of the bootstrap
 * (Efron &amp; Tibshirani, "An Introduction to the Bootstrap", 1993, ch. 13), its bounds by
 * {@link Percentile#RULE}. The same seed gives the same answer, on any machine. It takes the values as
 * independent; several measurements at one place are not, and make the interval too narrow.
 *
 * @param seed       any number
 * @param resamples  at least 100
 * @param confidence between 0 and 1
 */
public record Bootstrap(long seed, int resamples, double confidence) implements Serializable {

	/** Enough for two digits of a bound. */
	public static final int USUAL_RESAMPLES = 1000;

	public Bootstrap {
		Interval.checkConfidence(confidence);
		if (resamples < 100) {
			throw new IllegalArgumentException("resamples must be at least 100, was " + resamples);
		}
	}

	/** 1000 resamples, 95 %. */
	public static Bootstrap seeded(long seed) {
		return new Bootstrap(seed, USUAL_RESAMPLES, 0.95);
	}

	/** The interval of the mean, in the unit of the values; NaN bounds for no values. */
	public Interval mean(double[] values) {
		return interval(values, null);
	}

	/**
	 * The interval of mean(numerator) / mean(denominator) where the two are measured on the same items: an
	 * item is drawn with both its values.
	 *
	 * @param denominator as long as {@code numerator}, positive on average
	 * @return without unit; NaN bounds for no values, and where all that is drawn of the denominator may be 0
	 * @throws IllegalArgumentException where the lengths differ
	 */
	public Interval ratioOfMeans(double[] numerator, double[] denominator) {
		if (numerator.length != denominator.length) {
			throw new IllegalArgumentException("lengths differ: " + numerator.length + " and " + denominator.length);
		}
		return interval(numerator, denominator);
	}

	private Interval interval(double[] values, double[] divisors) {
		int n = values.length;
		if (n == 0) {
			return new Interval(Double.NaN, Double.NaN, confidence);
		}
		MersenneTwister random = new MersenneTwister(seed);
		double[] figures = new double[resamples];
		for (int b = 0; b < resamples; b++) {
			double sum = 0;
			double divisor = 0;
			for (int i = 0; i < n; i++) {
				int drawn = random.nextInt(n);
				sum += values[drawn];
				divisor += divisors == null ? 1 : divisors[drawn];
			}
			figures[b] = sum / divisor;
			if (Double.isNaN(figures[b])) { // all drawn errors may be 0 where plain matching is exact
				return new Interval(Double.NaN, Double.NaN, confidence);
			}
		}
		double tail = 50 * (1 - confidence);
		double[] bounds = Percentile.of(Percentile.RULE, figures, tail, 100 - tail);
		return new Interval(bounds[0], bounds[1], confidence);
	}
}
