package org.cairnfield.core.stats;

import java.io.Serializable;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.HypergeometricDistribution;

/**
 * How many items of a lot are looked at before the rest is accepted unseen, and how many of those may be bad.
 * A single lot, such as a band of proposals, is best served by a limiting quality: a lot worse than that is
 * hardly ever accepted. (The plans of ISO 2859-1 assume a series of lots.)
 *
 * @param lot        items in all
 * @param size       items looked at, 0 … lot
 * @param acceptance the lot is accepted with so many bad ones among them, not with more
 */
public record SamplingPlan(int lot, int size, int acceptance) implements Serializable {

	/** Largest lots of the code letters of general inspection level II of ISO 2859-1; common practice, values from memory. */
	private static final int[] LETTER_LOTS = { 8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000, 150_000,
			500_000, Integer.MAX_VALUE };
	private static final String LETTERS = "ABCDEFGHJKLMNPQ";
	private static final int[] LETTER_SIZES = { 2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250 };

	public SamplingPlan {
		if (lot < 0 || size < 0 || size > lot || acceptance < 0) {
			throw new IllegalArgumentException(
					"no plan looks at " + size + " of " + lot + " and accepts " + acceptance + " bad");
		}
	}

	/**
	 * The smallest sample that accepts a lot with more than {@code limitShare} bad items with a probability of
	 * at most 1 − confidence. Exact for the lot (hypergeometric); for large lots, 5 % and no bad one accepted
	 * it is 59.
	 *
	 * @param lot        0 or more
	 * @param limitShare of bad items that must not pass, between 0 and 1
	 * @param acceptance as in the plan
	 * @return the whole lot where no smaller sample will do
	 */
	public static SamplingPlan limitingQuality(int lot, double limitShare, double confidence, int acceptance) {
		Interval.checkConfidence(confidence);
		if (!(limitShare > 0 && limitShare < 1)) {
			throw new IllegalArgumentException("the limiting share must lie between 0 and 1, was " + limitShare);
		}
		int bad = (int) Math.floor(limitShare * lot) + 1; // the fewest that are more than the share
		int low = Math.min(lot, acceptance);
		int high = lot;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (new SamplingPlan(lot, middle, acceptance).acceptedWith(bad) <= 1 - confidence) {
				high = middle;
			} else {
				low = middle + 1;
			}
		}
		return new SamplingPlan(lot, low, acceptance);
	}

	/** The probability that a lot with so many bad items is accepted (hypergeometric). */
	public double acceptedWith(int bad) {
		if (bad < 0 || bad > lot) {
			throw new IllegalArgumentException(bad + " bad of " + lot);
		}
		return lot == 0 || size == 0 || bad <= acceptance ? 1
				: new HypergeometricDistribution(null, lot, bad, size).cumulativeProbability(acceptance);
	}

	/** The probability that a very large lot with that share of bad items is accepted (binomial). */
	public double acceptedAt(double badShare) {
		return size == 0 ? 1 : new BinomialDistribution(null, size, badShare).cumulativeProbability(acceptance);
	}

	/** Whether a sample with so many bad ones accepts the lot. */
	public boolean accepts(int badInSample) {
		return badInSample <= acceptance;
	}

	/** The code letter of a lot, general inspection level II of ISO 2859-1; common practice. */
	public static char codeLetter(int lot) {
		return LETTERS.charAt(letter(lot));
	}

	/** The sample size of that letter, single normal sampling, at most the lot; common practice. */
	public static int letterSize(int lot) {
		return Math.min(lot, LETTER_SIZES[letter(lot)]);
	}

	private static int letter(int lot) {
		int letter = 0;
		while (lot > LETTER_LOTS[letter]) {
			letter++;
		}
		return letter;
	}
}
