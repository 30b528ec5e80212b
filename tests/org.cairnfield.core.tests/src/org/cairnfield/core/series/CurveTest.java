package org.cairnfield.core.series;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CurveTest {

	@Test
	void countsTheShareUpToEachValue() {
		Series curve = Curve.distribution("plain", new double[] { 3, 1, 1, 2 });
		assertEquals("plain", curve.name());
		assertArrayEquals(new double[] { 0, 1, 2, 3 }, curve.xs(), 0);
		assertArrayEquals(new double[] { 0, 0.5, 0.75, 1 }, curve.ys(), 0);
	}

	@Test
	void showsErrorsOfZeroAsAStepAtZero() {
		Series curve = Curve.distribution("plain", new double[] { 0, 0, 0, 4 });
		assertArrayEquals(new double[] { 0, 0, 4 }, curve.xs(), 0);
		assertArrayEquals(new double[] { 0, 0.75, 1 }, curve.ys(), 0);
	}

	@Test
	void drawsAtMostAThousandPointsCloseToTheFullCurve() {
		double[] values = new Random(5).doubles(50_000).map(u -> -6 * Math.log(1 - u)).toArray();
		Series curve = Curve.distribution("many", values);
		assertTrue(curve.size() <= Curve.MOST_POINTS, "points: " + curve.size());
		assertTrue(curve.size() > 400, "points: " + curve.size());
		Arrays.sort(values);
		int point = 0;
		for (int i = 0; i < values.length; i++) {
			while (point + 1 < curve.size() && curve.x(point + 1) <= values[i]) {
				point++;
			}
			// Steps are drawn from the last point kept: off by a band at most.
			assertEquals((i + 1) / 50_000.0, curve.y(point), 0.005);
		}
		assertEquals(values[49_999], curve.x(curve.size() - 1), 0);
		assertEquals(1, curve.y(curve.size() - 1), 0);
	}

	@Test
	void keepsBothEndsOfAJumpAndOfAFlatStretch() {
		double[] values = new Random(6).doubles(20_000, 0, 5).toArray();
		// A tenth has exactly 2 m; three are far out.
		Arrays.fill(values, 0, 2000, 2);
		values[3000] = 40;
		values[3001] = 41;
		values[3002] = 90;
		Series curve = Curve.distribution("steps", values);
		int at = Arrays.binarySearch(curve.xs(), 2);
		assertTrue(at > 0);
		assertEquals(0.1, curve.y(at) - curve.y(at - 1), 0.0005);
		assertArrayEquals(new double[] { 40, 41, 90 },
				Arrays.copyOfRange(curve.xs(), curve.size() - 3, curve.size()), 0);
		assertTrue(curve.x(curve.size() - 4) > 4.99);
	}

	@Test
	void ordersValuesOverTheirRank() {
		Series curve = Curve.ascending("third nearest", new double[] { 5, 2, 9 });
		assertArrayEquals(new double[] { 1, 2, 3 }, curve.xs(), 0);
		assertArrayEquals(new double[] { 2, 5, 9 }, curve.ys(), 0);
	}

	@Test
	void thinsALongCurveOfDistancesWithoutLosingItsEnd() {
		double[] values = new Random(7).doubles(20_000).map(u -> 40 + 60 * u * u).toArray();
		values[12] = 400;
		values[99] = 250;
		Series curve = Curve.ascending("third nearest", values);
		assertTrue(curve.size() <= Curve.MOST_POINTS);
		assertArrayEquals(new double[] { 250, 400 }, Arrays.copyOfRange(curve.ys(), curve.size() - 2, curve.size()), 0);
		assertEquals(20_000, curve.x(curve.size() - 1), 0);
		assertEquals(1, curve.x(0), 0);
	}

	@Test
	void isEmptyForNoValuesAndRefusesWhatIsNotFinite() {
		assertEquals(0, Curve.distribution("none", new double[0]).size());
		assertEquals(0, Curve.ascending("none", new double[0]).size());
		assertThrows(IllegalArgumentException.class, () -> Curve.distribution("a", new double[] { 1, Double.NaN }));
		assertThrows(IllegalArgumentException.class,
				() -> Curve.ascending("a", new double[] { 1, Double.POSITIVE_INFINITY }));
	}
}
