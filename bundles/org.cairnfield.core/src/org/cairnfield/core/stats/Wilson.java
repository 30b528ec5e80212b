package org.cairnfield.core.stats;

import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * The score interval of a share (Wilson 1927; NIST/SEMATECH e-Handbook, 7.2.4.1), which stays sensible
 * for few trials and for shares near 0 and 1.
 */
public final class Wilson {

	private Wilson() {
	}

	/**
	 * @param hits   from 0 to {@code trials}
	 * @param trials 0 gives [0, 1]: nothing is known
	 * @return the two-sided interval, within [0, 1]
	 * @throws IllegalArgumentException where a count or the confidence is out of range
	 */
	public static Interval interval(int hits, int trials, double confidence) {
		Interval.checkConfidence(confidence);
		if (hits < 0 || hits > trials) {
			throw new IllegalArgumentException(hits + " hits of " + trials + " trials");
		}
		if (trials == 0) {
			return new Interval(0, 1, confidence);
		}
		ConfidenceInterval found = new WilsonScoreInterval().createInterval(trials, hits, confidence);
		// The ends are exact there; the formula is off by rounding.
		double low = hits == 0 ? 0 : Math.max(0, found.getLowerBound());
		double high = hits == trials ? 1 : Math.min(1, found.getUpperBound());
		return new Interval(low, high, confidence);
	}
}
