package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WilsonTest {

	@Test
	void agreesWithFourOfTwenty() {
		// NIST/SEMATECH e-Handbook 7.2.4.1: 4 defects of 20; the formula carried to six digits.
		assertInterval(.093118, .378377, Wilson.interval(4, 20, 0.90));
		assertInterval(.080658, .416017, Wilson.interval(4, 20, 0.95));
	}

	@Test
	void staysWithinZeroAndOne() {
		assertInterval(0, .277533, Wilson.interval(0, 10, 0.95));
		assertInterval(.722467, 1, Wilson.interval(10, 10, 0.95));
		assertEquals(0, Wilson.interval(0, 10, 0.95).low(), 0);
		assertEquals(1, Wilson.interval(10, 10, 0.95).high(), 0);
	}

	@Test
	void knowsNothingWithoutTrials() {
		assertEquals(new Interval(0, 1, 0.95), Wilson.interval(0, 0, 0.95));
	}

	@Test
	void holdsTheShareItIsAbout() {
		assertTrue(Wilson.interval(4, 20, 0.95).contains(0.2));
		assertFalse(Wilson.interval(4, 20, 0.95).contains(0.5));
	}

	@Test
	void refusesImpossibleCounts() {
		assertThrows(IllegalArgumentException.class, () -> Wilson.interval(-1, 10, 0.95));
		assertThrows(IllegalArgumentException.class, () -> Wilson.interval(11, 10, 0.95));
		assertThrows(IllegalArgumentException.class, () -> Wilson.interval(1, 10, 1));
	}

	private static void assertInterval(double low, double high, Interval found) {
		assertEquals(low, found.low(), 1e-6);
		assertEquals(high, found.high(), 1e-6);
	}
}
