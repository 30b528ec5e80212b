package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SamplingPlanTest {

	@Test
	void hasTheKnownSizesForLargeLotsWithoutABadOne() {
		// Zero bad ones of 59 leave "less than 5 %", of 299 "less than 1 %" at 95 %: 1 − 0.05^(1/n).
		assertEquals(59, SamplingPlan.limitingQuality(10_000_000, 0.05, 0.95, 0).size());
		assertEquals(299, SamplingPlan.limitingQuality(100_000_000, 0.01, 0.95, 0).size());
	}

	@Test
	void followsTheOperatingCharacteristicOfLetterK() {
		// n = 125, accept 3, refuse 4: binomial, computed independently.
		SamplingPlan plan = new SamplingPlan(3200, 125, 3);
		assertEquals(.962551, plan.acceptedAt(.01), 1e-6);
		assertEquals(.758670, plan.acceptedAt(.02), 1e-6);
		assertEquals(.481405, plan.acceptedAt(.03), 1e-6);
		assertEquals(.123785, plan.acceptedAt(.05), 1e-6);
		assertEquals(.053895, plan.acceptedAt(.06), 1e-6);
		// Hypergeometric for a lot of 2000 with 20 bad ones, computed independently.
		assertEquals(.967750, new SamplingPlan(2000, 125, 3).acceptedWith(20), 1e-6);
	}

	@Test
	void hasTheCodeLettersOfLevelTwo() {
		// ISO 2859-1: lots of 1201 to 3200 have letter K and 125 items.
		assertEquals('K', SamplingPlan.codeLetter(1201));
		assertEquals('K', SamplingPlan.codeLetter(3200));
		assertEquals(125, SamplingPlan.letterSize(2000));
		assertEquals('A', SamplingPlan.codeLetter(2));
		assertEquals(2, SamplingPlan.letterSize(2));
		assertEquals(1, SamplingPlan.letterSize(1));
	}

	@Test
	void takesTheSmallestSampleThatWillDo() {
		for (int lot : new int[] { 1, 5, 19, 20, 21, 60, 214, 3000 }) {
			for (int accept : new int[] { 0, 1, 2 }) {
				SamplingPlan plan = SamplingPlan.limitingQuality(lot, 0.05, 0.95, accept);
				int bad = (int) Math.floor(0.05 * lot) + 1;
				assertTrue(plan.size() == lot || plan.acceptedWith(bad) <= 0.05, plan::toString);
				assertTrue(
						plan.size() <= accept
								|| new SamplingPlan(lot, plan.size() - 1, accept).acceptedWith(bad) > 0.05,
						plan::toString);
			}
		}
	}

	@Test
	void looksAtAllOfASmallLot() {
		// one bad one of 19 is more than 5 %, and to be 95 % sure of meeting it all must be seen
		assertEquals(19, SamplingPlan.limitingQuality(19, 0.05, 0.95, 0).size());
		assertEquals(0, SamplingPlan.limitingQuality(0, 0.05, 0.95, 0).size());
	}

	@Test
	void acceptsUpToItsNumber() {
		assertTrue(new SamplingPlan(100, 20, 1).accepts(1));
		assertFalse(new SamplingPlan(100, 20, 1).accepts(2));
	}

	@Test
	void refusesPlansThatAreNone() {
		assertThrows(IllegalArgumentException.class, () -> new SamplingPlan(10, 11, 0));
		assertThrows(IllegalArgumentException.class, () -> SamplingPlan.limitingQuality(10, 0, 0.95, 0));
		assertThrows(IllegalArgumentException.class, () -> SamplingPlan.limitingQuality(10, 0.05, 1, 0));
		assertThrows(IllegalArgumentException.class, () -> new SamplingPlan(10, 5, 0).acceptedWith(11));
	}
}
