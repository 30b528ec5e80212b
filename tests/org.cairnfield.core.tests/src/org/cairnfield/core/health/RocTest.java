package org.cairnfield.core.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.junit.jupiter.api.Test;

class RocTest {

	private static double u(double[] bad, double[] good) {
		return Roc.mannWhitneyU(joined(bad, good), labels(bad, good));
	}

	private static double[] joined(double[] bad, double[] good) {
		double[] all = new double[bad.length + good.length];
		System.arraycopy(bad, 0, all, 0, bad.length);
		System.arraycopy(good, 0, all, bad.length, good.length);
		return all;
	}

	private static boolean[] labels(double[] bad, double[] good) {
		boolean[] labels = new boolean[bad.length + good.length];
		Arrays.fill(labels, 0, bad.length, true);
		return labels;
	}

	// NIST/SEMATECH e-Handbook, section 7.3.5 (rank sums 106 and 147, ties averaged): U is 40 for A, 81 for B.
	@Test
	void agreesWithTheNistExample() {
		double[] a = { .55, .67, .43, .51, .48, .60, .71, .53, .44, .65, .75 };
		double[] b = { .49, .68, .59, .72, .67, .75, .65, .77, .62, .48, .59 };
		assertEquals(40, u(a, b), 1e-9);
		assertEquals(81, u(b, a), 1e-9);
		assertEquals(81 / 121.0, Roc.area(joined(b, a), labels(b, a)), 1e-12);
	}

	// Example of the SciPy documentation of mannwhitneyu: U 17 and 3.
	@Test
	void agreesWithASmallPublishedExample() {
		double[] males = { 19, 22, 16, 29, 24 };
		double[] females = { 20, 11, 17, 12 };
		assertEquals(17, u(males, females), 1e-9);
		assertEquals(3, u(females, males), 1e-9);
	}

	@Test
	void tiesCountHalfAndInfinitiesCompare() {
		assertEquals(0.5, Roc.area(new double[] { 1, 1, 1 }, new boolean[] { true, false, false }), 0);
		assertEquals(1, Roc.area(new double[] { Double.POSITIVE_INFINITY, 1, Double.NEGATIVE_INFINITY },
				new boolean[] { true, false, false }), 0);
		assertEquals(0.75, Roc.area(new double[] { 2, 2, 1 }, new boolean[] { true, false, false }), 1e-12);
	}

	@Test
	void saysWhenThereIsNothingToTell() {
		assertTrue(Double.isNaN(Roc.area(new double[] { 1, 2 }, new boolean[2])));
		assertTrue(Double.isNaN(Roc.area(new double[0], new boolean[0])));
		assertThrows(IllegalArgumentException.class, () -> Roc.area(new double[2], new boolean[3]));
		assertThrows(IllegalArgumentException.class,
				() -> Roc.area(new double[] { Double.NaN, 1 }, new boolean[] { true, false }));
	}
}
