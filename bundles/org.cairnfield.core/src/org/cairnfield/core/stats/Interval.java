package org.cairnfield.core.stats;

import java.io.Serializable;

/**
 * A confidence interval, in the unit of what it is about.
 *
 * @param confidence such as 0.95
 */
public record Interval(double low, double high, double confidence) implements Serializable {

	/** True where the value lies inside or on a bound. */
	public boolean contains(double value) {
		return low <= value && value <= high;
	}

	static void checkConfidence(double confidence) {
		if (!(confidence > 0 && confidence < 1)) {
			throw new IllegalArgumentException("confidence must lie between 0 and 1, was " + confidence);
		}
	}
}
