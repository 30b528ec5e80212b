package org.cairnfield.curation.internal.selftest;

import java.util.Arrays;

/**
 * How many of a rule's findings are as strong as faults are. Of faults planted half lie above their median; so, if of the findings
 * fewer do, the rest is weaker than faults: chance, and what this map looks like. The same for some other shares, averaged. Assumes
 * that faults in the map are as strong as those planted, and that false alarms are seldom stronger than the weaker faults.
 */
final class Strengths {

	private static final double[] SHARES = { 0.1, 0.2, 0.3, 0.4, 0.5 };

	private Strengths() {
	}

	/** @return 0 … 1; 1 where there is nothing to compare */
	static double share(double[] found, double[] planted) {
		if (found.length == 0 || planted.length == 0) {
			return 1;
		}
		double[] sorted = planted.clone();
		Arrays.sort(sorted);
		double sum = 0;
		for (double share : SHARES) {
			double limit = sorted[(int) (share * sorted.length)];
			double above = (double) Arrays.stream(found).filter(strength -> strength >= limit).count() / found.length;
			double expected = (double) Arrays.stream(sorted).filter(strength -> strength >= limit).count()
					/ sorted.length;
			sum += Math.min(1, above / expected);
		}
		return sum / SHARES.length;
	}
}
