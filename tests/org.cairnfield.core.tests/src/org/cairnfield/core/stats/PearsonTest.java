package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class PearsonTest {

	@Test
	void reproducesAnscombesQuartet() {
		// Data: Anscombe 1973; r by exact arithmetic.
		assertEquals(0.816420516344840, Pearson.r(Published.ANSCOMBE_X, Published.ANSCOMBE_Y1), 1e-12);
		assertEquals(0.816236506000243, Pearson.r(Published.ANSCOMBE_X, Published.ANSCOMBE_Y2), 1e-12);
		assertEquals(0.816286739489598, Pearson.r(Published.ANSCOMBE_X, Published.ANSCOMBE_Y3), 1e-12);
		assertEquals(0.816521436888503, Pearson.r(Published.ANSCOMBE_X4, Published.ANSCOMBE_Y4), 1e-12);
	}

	@Test
	void reproducesNorris() {
		// NIST StRD Norris: certified R² = 0.999993745883712, slope positive.
		double r = Pearson.r(Published.NORRIS_X, Published.NORRIS_Y);
		assertEquals(0.999996872936967, r, 1e-12);
		assertEquals(0.999993745883712, r * r, 1e-12);
	}

	@Test
	void reproducesPairsOfLongley() {
		// NIST StRD Longley data; r computed with 60 digits.
		assertEquals(0.9952734837647847, Pearson.r(Published.LONGLEY_GNP, Published.LONGLEY_YEAR), 1e-12);
		assertEquals(0.9835516111796693, Pearson.r(Published.LONGLEY_EMPLOYED, Published.LONGLEY_GNP), 1e-12);
		assertEquals(0.5024980838759941, Pearson.r(Published.LONGLEY_EMPLOYED, Published.LONGLEY_UNEMPLOYED), 1e-12);
	}

	@Test
	void isNotDisturbedByALargeOffset() {
		// Exactly 0.8; sums of squares without centring give 0.7071 at 1e8 and NaN at 1e9.
		for (double offset : new double[] { 0, 1e8, 1e9, 1e12 }) {
			assertEquals(0.8, Pearson.r(plus(offset, 1, 2, 3, 4, 5), plus(offset, 1, 3, 2, 5, 4)), 1e-9);
		}
	}

	@Test
	void isUndefinedForAConstantVector() {
		Random random = new Random(12);
		for (int n = 2; n < 600; n++) {
			double[] constant = new double[n];
			// Values whose plain mean is off by rounding.
			Arrays.fill(constant, -100 * random.nextDouble());
			double[] varied = random.doubles(n).toArray();
			assertTrue(Double.isNaN(Pearson.r(constant, varied)));
			assertTrue(Double.isNaN(Pearson.r(varied, constant)));
			assertTrue(Double.isNaN(Pearson.r(constant, constant)));
		}
	}

	@Test
	void isUndefinedForFewerThanTwoValuesOrNaN() {
		assertTrue(Double.isNaN(Pearson.r(new double[0], new double[0])));
		assertTrue(Double.isNaN(Pearson.r(new double[] { 1 }, new double[] { 2 })));
		assertTrue(Double.isNaN(Pearson.r(new double[] { 1, 2, Double.NaN }, new double[] { 1, 2, 3 })));
		assertEquals(-1, Pearson.r(new double[] { 1, 2 }, new double[] { 5, 3 }), 1e-15);
	}

	@Test
	void isBlindToOffsetAndGainOfAFingerprint() {
		double[] sample = { -50, -66, -79, -83 };
		assertEquals(0.998269178820752, Pearson.r(sample, new double[] { -45, -60, -75, -80 }), 1e-12);
		assertEquals(0.998269178820752, Pearson.r(sample, plus(20, -45, -60, -75, -80)), 1e-12);
		assertEquals(-0.982819200799740, Pearson.r(sample, new double[] { -80, -70, -55, -48 }), 1e-12);
	}

	@Test
	void agreesWithCommonsMathOnRandomVectors() {
		Random random = new Random(5);
		for (int i = 0; i < 50; i++) {
			double[] x = random.doubles(40, -100, -20).toArray();
			double[] y = random.doubles(40, -100, -20).toArray();
			assertEquals(new PearsonsCorrelation().correlation(x, y), Pearson.r(x, y), 1e-13);
		}
	}

	@Test
	void refusesDifferentLengths() {
		assertThrows(IllegalArgumentException.class, () -> Pearson.r(new double[2], new double[3]));
	}

	private static double[] plus(double offset, double... values) {
		return Arrays.stream(values).map(v -> v + offset).toArray();
	}
}
