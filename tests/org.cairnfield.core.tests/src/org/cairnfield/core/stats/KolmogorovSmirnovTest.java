package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class KolmogorovSmirnovTest {

	private static final double[] SPRING = { -62, -63, -61, -64, -60, -63, -62, -65, -61, -62.5 };
	private static final double[] AUTUMN = { -66, -67, -65.5, -68, -64.5, -66.5, -67.5, -63.5, -69, -66.2 };

	@Test
	void givesThePublishedCriticalValues() {
		// A published table of the two-sample test has 0.522 for n = 15, m = 28 at 1 %, with the factor rounded to 1.63.
		assertEquals(0.522, KolmogorovSmirnov.critical(15, 28, 0.01), 0.0015);
		// Factors c(α) = √(−ln(α/2)/2): 1.2239, 1.3581, 1.6276, 1.9495 at 10 %, 5 %, 1 %, 0.1 %.
		double[] alphas = { 0.10, 0.05, 0.01, 0.001 };
		double[] factors = { 1.223873, 1.358102, 1.627624, 1.949475 };
		for (int i = 0; i < alphas.length; i++) {
			assertEquals(factors[i] * Math.sqrt(200.0 / 10_000), KolmogorovSmirnov.critical(100, 100, alphas[i]), 1e-6);
		}
		assertEquals(0.6074, KolmogorovSmirnov.critical(10, 10, 0.05), 1e-4);
	}

	@Test
	void findsTheLargestDifference() {
		assertEquals(0.8, KolmogorovSmirnov.statistic(SPRING, AUTUMN), 1e-12);
		assertEquals(0, KolmogorovSmirnov.statistic(SPRING, SPRING), 1e-12);
		assertEquals(1, KolmogorovSmirnov.statistic(new double[] { 1, 2 }, new double[] { 3, 4, 5 }), 1e-12);
	}

	@Test
	void rejectsWhereTheStatisticIsBeyondTheCriticalValue() {
		assertTrue(KolmogorovSmirnov.differ(SPRING, AUTUMN, 0.05));
		assertFalse(KolmogorovSmirnov.differ(SPRING, SPRING, 0.05));
		assertFalse(KolmogorovSmirnov.differ(SPRING, AUTUMN, 0.0005));
	}

	@Test
	void knowsNothingOfFewerThanTwoValues() {
		assertTrue(Double.isNaN(KolmogorovSmirnov.statistic(new double[] { 1 }, SPRING)));
		assertFalse(KolmogorovSmirnov.differ(new double[0], SPRING, 0.05));
		assertThrows(IllegalArgumentException.class, () -> KolmogorovSmirnov.critical(0, 5, 0.05));
		assertThrows(IllegalArgumentException.class, () -> KolmogorovSmirnov.critical(5, 5, 1));
	}
}
