package org.cairnfield.core.stats;

import java.util.Arrays;

/** The middle value, or half way between the two in the middle; NaN where there is none. In the unit of the values. */
public final class Median {

	private Median() {
	}

	/** Of values that stay as they are. */
	public static double of(double[] values) {
		return ofFirst(values.clone(), values.length);
	}

	/** Of the first {@code count} values, which it sorts: for lists that are rewritten all the time. */
	public static double ofFirst(double[] values, int count) {
		if (count == 0) {
			return Double.NaN;
		}
		Arrays.sort(values, 0, count);
		int middle = count / 2;
		// halved first, so that large values do not overflow
		return count % 2 == 1 ? values[middle] : values[middle - 1] / 2 + values[middle] / 2;
	}
}
