package org.cairnfield.core.health;

import java.util.Arrays;

/** Medians of short lists that are rewritten all the time. */
final class Medians {

	private Medians() {
	}

	/** The median of the first {@code count} values, which it sorts; NaN where there are none. */
	static double median(double[] values, int count) {
		if (count == 0) {
			return Double.NaN;
		}
		Arrays.sort(values, 0, count);
		int middle = count / 2;
		// Halved first, so that large values do not overflow.
		return count % 2 == 1 ? values[middle] : values[middle - 1] / 2 + values[middle] / 2;
	}
}
