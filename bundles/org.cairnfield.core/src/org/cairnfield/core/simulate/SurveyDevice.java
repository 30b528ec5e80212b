package org.cairnfield.core.simulate;

/**
 * A receiver as the simulation knows it. Levels come out in whole dBm within −100 … −20; one below is lost, one
 * above reads −20.
 *
 * @param offsetDb         added to every level
 * @param thresholdDbm     level, as this device reads it, at which half of the access points are missed
 * @param thresholdWidthDb how gradual that is: scale of the logistic curve
 * @param dropoutShare     readings lost whatever their level, 0 … 1
 */
public record SurveyDevice(String name, double offsetDb, double thresholdDbm, double thresholdWidthDb,
		double dropoutShare) {

	/** The lowest level read, dBm. */
	public static final int LOWEST_DBM = -100;
	/** The highest level read, dBm. */
	public static final int HIGHEST_DBM = -20;
	/** Levels this many widths below the threshold are heard once in about 3000 times. */
	private static final double WIDTHS_BELOW = 8;

	/** A usual device: half missed at −91 dBm, one reading in 50 lost. */
	public static SurveyDevice of(String name, double offsetDb) {
		return new SurveyDevice(name, offsetDb, -91, 1.5, 0.02);
	}

	/** How likely a level, as the device would read it, is heard. */
	double chanceOfHearing(double levelDbm) {
		return (1 - dropoutShare) / (1 + Math.exp((thresholdDbm - levelDbm) / thresholdWidthDb));
	}

	/** The level below which nothing is worth computing, before the device's offset, dBm. */
	double cutoffDbm() {
		return Math.max(LOWEST_DBM, thresholdDbm - WIDTHS_BELOW * thresholdWidthDb) - offsetDb;
	}
}
