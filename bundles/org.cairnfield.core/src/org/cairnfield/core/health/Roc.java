package org.cairnfield.core.health;

import org.apache.commons.math3.stat.ranking.NaNStrategy;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/** How well a score tells bad samples from good ones, whatever threshold is set. */
public final class Roc {

	private Roc() {
	}

	/**
	 * Mann and Whitney's U of the bad samples: pairs (bad, good) in which the bad one scores higher, ties
	 * counting half.
	 *
	 * @param scores higher means worse; infinities allowed
	 * @throws IllegalArgumentException where lengths differ or a score is NaN
	 */
	public static double mannWhitneyU(double[] scores, boolean[] isBad) {
		if (scores.length != isBad.length) {
			throw new IllegalArgumentException(scores.length + " scores, " + isBad.length + " labels");
		}
		for (double score : scores) {
			if (Double.isNaN(score)) {
				throw new IllegalArgumentException("a score is not a number");
			}
		}
		if (scores.length == 0) {
			return 0;
		}
		double[] ranks = new NaturalRanking(NaNStrategy.FAILED, TiesStrategy.AVERAGE).rank(scores);
		double sum = 0;
		long bad = 0;
		for (int i = 0; i < ranks.length; i++) {
			if (isBad[i]) {
				sum += ranks[i];
				bad++;
			}
		}
		return sum - bad * (bad + 1) / 2.0;
	}

	/**
	 * Area under the receiver operating characteristic: the chance that a bad sample scores higher than a good
	 * one, U / (bad · good). 1 separates them, 0.5 tells nothing.
	 *
	 * @return NaN where all samples are bad or all are good
	 * @throws IllegalArgumentException as {@link #mannWhitneyU}
	 */
	public static double area(double[] scores, boolean[] isBad) {
		double u = mannWhitneyU(scores, isBad);
		long bad = 0;
		for (boolean b : isBad) {
			bad += b ? 1 : 0;
		}
		return u / ((double) bad * (isBad.length - bad));
	}
}
