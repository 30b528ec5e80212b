package org.cairnfield.core.stats;

/**
 * The two ways to average signal levels. "Mean RSSI" without more is {@link #meanOfLevelsDbm} throughout
 * the product: levels spread about symmetrically in dB, and readings are compared in dB.
 */
public final class Decibels {

	private Decibels() {
	}

	/** The plain mean of the levels, in dBm; NaN for none. */
	public static double meanOfLevelsDbm(double[] levelsDbm) {
		double sum = 0;
		for (double level : levelsDbm) {
			sum += level;
		}
		return sum / levelsDbm.length;
	}

	/** The level of the mean power, 10·log10 of the mean of 10^(level / 10), in dBm; NaN for none. */
	public static double meanOfPowersDbm(double[] levelsDbm) {
		double milliwatts = 0;
		for (double level : levelsDbm) {
			milliwatts += Math.pow(10, level / 10);
		}
		return 10 * Math.log10(milliwatts / levelsDbm.length);
	}
}
