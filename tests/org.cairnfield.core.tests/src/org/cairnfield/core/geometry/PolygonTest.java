package org.cairnfield.core.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PolygonTest {

	/** An L: 10 m by 10 m without its upper right quarter. */
	private static final Polygon L = new Polygon(new double[] { 0, 10, 10, 5, 5, 0 }, new double[] { 0, 0, 5, 5, 10, 10 });

	@Test
	void tellsInsideFromOutside() {
		assertTrue(L.contains(2, 8));
		assertTrue(L.contains(8, 2));
		assertFalse(L.contains(8, 8));
		assertFalse(L.contains(-1, 5));
		assertFalse(L.contains(5, 11));
	}

	@Test
	void measuresToTheNearestEdge() {
		assertEquals(3, L.metresToEdge(8, 8));
		assertEquals(1, L.metresToEdge(9, 2));
		assertEquals(Math.hypot(3, 4), L.metresToEdge(-3, -4), 1e-12);
	}

	@Test
	void drawsTheSmallestConvexOutline() {
		Polygon hull = Polygon.around(new double[] { 0, 4, 4, 0, 2, 1, 4 }, new double[] { 0, 0, 4, 4, 2, 3, 2 });
		assertArrayEquals(new double[] { 0, 0, 4, 4 }, hull.bounds());
		assertTrue(hull.contains(1, 2));
		assertEquals(0, hull.metresToEdge(4, 2));
		assertFalse(hull.contains(4.1, 2));
		assertNull(Polygon.around(new double[] { 0, 1, 2 }, new double[] { 0, 1, 2 }), "on one line");
		assertNull(Polygon.around(new double[] { 3, 3, 3 }, new double[] { 1, 1, 1 }), "at one place");
	}

	@Test
	void refusesWhatIsNoOutline() {
		assertThrows(IllegalArgumentException.class, () -> new Polygon(new double[] { 0, 1 }, new double[] { 0, 1 }));
		assertThrows(IllegalArgumentException.class, () -> new Polygon(new double[3], new double[4]));
	}

	/** The edge at the left and at the bottom counts as inside, that at the right and at the top does not, a corner likewise. */
	@Test
	void countsEachPlaceOnAnEdgeToOneOfTwoNeighbours() {
		Polygon left = Polygon.rectangle(0, 0, 4, 4);
		Polygon right = Polygon.rectangle(4, 0, 8, 4);
		for (double y : new double[] { 0, 1, 3.5 }) {
			assertFalse(left.contains(4, y));
			assertTrue(right.contains(4, y));
			assertTrue(left.contains(0, y));
		}
		assertFalse(left.contains(2, 4));
		assertFalse(left.contains(4, 4));
	}

	@Test
	void knowsItsAreaAndWhichWayRoundItGoes() {
		assertEquals(75, L.signedArea());
		assertEquals(-16, new Polygon(new double[] { 0, 0, 4, 4 }, new double[] { 0, 4, 4, 0 }).signedArea());
		double far = 4_864_949;
		assertEquals(16, Polygon.rectangle(far, far, far + 4, far + 4).signedArea(), 1e-6);
	}
}
