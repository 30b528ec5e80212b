package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

class FalseDiscoveryTest {

	/**
	 * The example of Benjamini and Hochberg (1995), section 3.2: fifteen tests of a trial of two treatments, of which four are
	 * rejected at 0.05. The values are from memory.
	 */
	@Test
	void rejectsFourOfTheAuthorsFifteen() {
		double[] p = { 0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719,
				0.6528, 0.7590, 1 };
		boolean[] expected = new boolean[15];
		for (int i = 0; i < 4; i++) {
			expected[i] = true;
		}
		assertArrayEquals(expected, FalseDiscovery.believed(p, 0.05));
	}

	@Test
	void believesAnEarlierOneForTheSakeOfALaterOne() {
		assertArrayEquals(new boolean[] { true, true, false },
				FalseDiscovery.believed(new double[] { 0.033, 0.02, 0.9 }, 0.05));
		assertArrayEquals(new boolean[0], FalseDiscovery.believed(new double[0], 0.05));
	}

	/** Where nothing is there, something is believed in about that share of the trials. */
	@Test
	void holdsItsRateWhereNothingIsThere() {
		Random random = new Random(5);
		int trials = 2000;
		int wrong = 0;
		for (int t = 0; t < trials; t++) {
			boolean any = false;
			for (boolean believed : FalseDiscovery.believed(random.doubles(20).toArray(), 0.1)) {
				any |= believed;
			}
			wrong += any ? 1 : 0;
		}
		double share = (double) wrong / trials;
		assertTrue(share > 0.08 && share < 0.12, "wrong in " + share);
	}
}
