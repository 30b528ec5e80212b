package org.cairnfield.curation.internal.rules.evidence;

import java.util.Arrays;
import org.cairnfield.core.stats.Median;

/** Spread that a few wild values cannot move. */
public final class Robust {

	/** Makes the median absolute deviation of normal values their standard deviation, 1 / Φ⁻¹(3/4). */
	public static final double MAD_TO_SD = 1.4826;

	private Robust() {
	}

	/** Median absolute deviation from the median, scaled to a standard deviation. */
	public static double sd(double[] values) {
		double middle = Median.of(values);
		return MAD_TO_SD * Median.of(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
	}
}
