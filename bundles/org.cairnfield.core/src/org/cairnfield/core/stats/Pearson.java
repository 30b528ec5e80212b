package org.cairnfield.core.stats;

/** Pearson's product-moment correlation, of centred values, so an offset common to all does no harm. */
public final class Pearson {

	private Pearson() {
	}

	/**
	 * The correlation of two vectors of the same length. It is blind to offset and gain: two fingerprints
	 * that differ by 20 dB throughout correlate perfectly.
	 *
	 * @return within [-1, 1]; NaN where it is undefined, that is for fewer than two values, for a vector
	 *         whose values are all the same, and where a value is not finite. NaN is not a weak correlation: a caller
	 *         must treat it apart
	 * @throws IllegalArgumentException where the lengths differ
	 */
	public static double r(double[] x, double[] y) {
		if (x.length != y.length) {
			throw new IllegalArgumentException("lengths differ: " + x.length + " and " + y.length);
		}
		int n = x.length;
		if (n < 2) {
			return Double.NaN;
		}
		double meanX = mean(x);
		double meanY = mean(y);
		double xx = 0;
		double yy = 0;
		double xy = 0;
		for (int i = 0; i < n; i++) {
			double dx = x[i] - meanX;
			double dy = y[i] - meanY;
			xx += dx * dx;
			yy += dy * dy;
			xy += dx * dy;
		}
		// A constant vector leaves 0 / 0, which stays NaN.
		return Math.max(-1, Math.min(1, xy / (Math.sqrt(xx) * Math.sqrt(yy))));
	}

	/** The second pass makes it exact for a constant vector, whose deviations are then exactly 0. */
	private static double mean(double[] values) {
		double sum = 0;
		for (double value : values) {
			sum += value;
		}
		double mean = sum / values.length;
		double rest = 0;
		for (double value : values) {
			rest += value - mean;
		}
		return mean + rest / values.length;
	}
}
