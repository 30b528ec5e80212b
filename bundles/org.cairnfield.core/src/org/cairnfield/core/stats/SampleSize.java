package org.cairnfield.core.stats;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How many items to look at so that a share is known closely enough, by the normal approximation at the share
 * of one half, where it is widest.
 */
public final class SampleSize {

	private SampleSize() {
	}

	/**
	 * Of a population without end.
	 *
	 * @param halfWidth of the interval of the share, between 0 and 1: 0.05 for ± 5 %
	 */
	public static int forShare(double halfWidth, double confidence) {
		return (int) Math.ceil(unlimited(halfWidth, confidence));
	}

	/** Of a finite population, which takes fewer: n / (1 + (n − 1) / population). */
	public static int forShare(double halfWidth, double confidence, int population) {
		double n = unlimited(halfWidth, confidence);
		return Math.min(population, (int) Math.ceil(n / (1 + (n - 1) / population)));
	}

	private static double unlimited(double halfWidth, double confidence) {
		Interval.checkConfidence(confidence);
		if (!(halfWidth > 0 && halfWidth < 1)) {
			throw new IllegalArgumentException("the half width must lie between 0 and 1, was " + halfWidth);
		}
		double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + confidence) / 2);
		return z * z / (4 * halfWidth * halfWidth);
	}
}
