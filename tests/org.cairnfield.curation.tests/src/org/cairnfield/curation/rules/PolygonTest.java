package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
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

	@Test
	void hasAnotherKeyWithAnotherCorner() {
		assertEquals(Polygon.rectangle(0, 0, 4, 4).key(), Polygon.rectangle(0, 0, 4, 4).key());
		assertNotEquals(Polygon.rectangle(0, 0, 4, 4).key(), Polygon.rectangle(0, 0, 4, 4.01).key());
	}
}
