package org.cairnfield.ui.review.internal.split;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.curation.measure.SplitFacts;
import org.junit.jupiter.api.Test;

class SplitWordsTest {

	@Test
	void writesEpsilonWithItsUnit() {
		assertEquals("191 dB", SplitWords.epsilon(191, "dB"));
		assertEquals("0.1235", SplitWords.epsilon(0.12346, ""));
		assertEquals("1235 dB", SplitWords.epsilon(1234.6, "dB"));
	}

	@Test
	void ordinalsReadAsWords() {
		assertEquals("1st", CurvePane.ordinal(1));
		assertEquals("3rd", CurvePane.ordinal(3));
		assertEquals("11th", CurvePane.ordinal(11));
		assertEquals("22nd", CurvePane.ordinal(22));
	}

	@Test
	void saysCostAndErrorAndWhatTheyAreFrom() {
		assertEquals(
				"163 comparisons per query (5.5 % of plain); mean error 4.08 m without the noise, plain 2.40 m; errors of 504 samples.",
				SplitWords.facts(new SplitFacts(2962, 33, 923, 0.312, 471, 162.9, 0.055, 4.084, 2.397, "504 samples")));
	}

	@Test
	void claimsNoErrorWhereNothingCouldBeHeldOut() {
		assertEquals("12 comparisons per query (40.0 % of plain).",
				SplitWords.facts(new SplitFacts(30, 2, 3, 0.1, 20, 12, 0.4, Double.NaN, Double.NaN, "0 samples")));
	}
}
