package org.cairnfield.curation.rules.evidence;

import java.util.Arrays;

/** Middle and spread that a few wild values cannot move. */
public final class Robust {

	/** Makes the median absolute deviation of normal values their standard deviation, 1 / Φ⁻¹(3/4). */
	public static final double MAD_TO_SD = 1.4826;

	private Robust() {
	}

	/** The middle value, or half way between the two in the middle; NaN where there is none. Sorts the first. */
	public static double medianSorting(double[] values, int count) {
		if (count == 0) {
			return Double.NaN;
		}
		Arrays.sort(values, 0, count);
		int middle = count / 2;
		return count % 2 == 1 ? values[middle] : values[middle - 1] / 2 + values[middle] / 2;
	}

	/** The middle of values that stay as they are. */
	public static double median(double[] values) {
		return medianSorting(values.clone(), values.length);
	}

	/** Median absolute deviation from the median, scaled to a standard deviation. */
	public static double sd(double[] values) {
		double middle = median(values);
		return MAD_TO_SD * median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
	}
}
