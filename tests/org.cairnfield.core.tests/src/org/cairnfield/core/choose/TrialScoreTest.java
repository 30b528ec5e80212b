package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class TrialScoreTest {

	/** 6 % from 5,000 samples on, less the caution. */
	private static final int SAMPLES = 10_000;

	private static List<TrialScore> ranked(TrialScore... scores) {
		return TrialScore.ranked(List.of(scores), Function.identity(), SAMPLES);
	}

	@Test
	void putsWhatIsWithinTheBudgetFirstHoweverGoodTheOthersAre() {
		TrialScore dear = new TrialScore(1, 0.07, 0.07);
		TrialScore dearer = new TrialScore(0.5, 0.2, 0.2);
		TrialScore cheap = new TrialScore(9, 0.02, 0.01);
		assertEquals(List.of(cheap, dear, dearer), ranked(dearer, dear, cheap));
	}

	@Test
	void takesTheOneThatComparesMostSamplesOfThoseThatAreAsGood() {
		TrialScore best = new TrialScore(2.00, 0.03, 0.010);
		TrialScore asGood = new TrialScore(2.05, 0.03, 0.020);
		TrialScore worse = new TrialScore(2.10, 0.05, 0.050);
		assertEquals(List.of(asGood, best, worse), ranked(worse, best, asGood));
	}

	@Test
	void keepsATenthOfTheBudgetBack() {
		assertEquals(0.054, TrialScore.allowedShare(SAMPLES), 1e-12);
		TrialScore atIt = new TrialScore(2, 0.054, 0.01);
		TrialScore beyond = new TrialScore(1, 0.0541, 0.01);
		assertEquals(List.of(atIt, beyond), ranked(beyond, atIt));
	}

	@Test
	void meansHoldOuts() {
		TrialScore mean = TrialScore.mean(List.of(new TrialScore(1, 0.1, 0.05), new TrialScore(3, 0.3, 0.15)));
		assertEquals(2, mean.meanErrorMetres(), 1e-12);
		assertEquals(0.2, mean.comparisonShare(), 1e-12);
		assertEquals(0.1, mean.sampleShare(), 1e-12);
	}
}
