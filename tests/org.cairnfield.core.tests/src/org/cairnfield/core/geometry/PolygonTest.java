package org.cairnfield.core.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.ConvexHull2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import org.junit.jupiter.api.Test;

class PolygonTest {

	/** An L: 10 m by 10 m without its upper right quarter. */
	private static final Polygon L = new Polygon(new double[] { 0, 10, 10, 5, 5, 0 },
			new double[] { 0, 0, 5, 5, 10, 10 });

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

	/** Worked by hand: the squares around (0, 0) and (2, 2) span a hexagon, the square of 4 m without two corners of 2 m². */
	@Test
	void leavesRoomAroundPlaces() {
		Polygon room = Polygon.around(new double[] { 0, 2, 1 }, new double[] { 0, 2, 1 }, 1);
		assertEquals(6, room.size());
		assertEquals(12, room.signedArea());
		assertArrayEquals(new double[] { -1, -1, 3, 3 }, room.bounds());
		assertEquals(Math.sqrt(2), room.metresToEdge(1, 1), 1e-12);
		assertArrayEquals(new double[] { 2, 2, 4, 4 },
				Polygon.around(new double[] { 3 }, new double[] { 3 }, 1).bounds());
		assertNull(Polygon.around(new double[] { 3 }, new double[] { 3 }, 0));
		assertNull(Polygon.around(new double[0], new double[0], 1));
	}

	/** As Commons Math has it around the corners of the squares of all places. */
	@Test
	void leavesRoomAsTheHullOfSquaresDoes() {
		Random dice = new Random(7301);
		for (int round = 0; round < 50; round++) {
			double[] x = dice.doubles(3 + dice.nextInt(30), 0, 40).toArray();
			double[] y = dice.doubles(x.length, 0, 25).toArray();
			List<Vector2D> squares = new ArrayList<>();
			for (int i = 0; i < 4 * x.length; i++) {
				squares.add(new Vector2D(x[i / 4] + (i % 2 == 0 ? -1.5 : 1.5), y[i / 4] + (i % 4 < 2 ? -1.5 : 1.5)));
			}
			Polygon room = Polygon.around(x, y, 1.5);
			ConvexHull2D hull = new MonotoneChain().generate(squares);
			assertEquals(hull.createRegion().getSize(), room.signedArea(), 1e-9);
			for (int i = 0; i < x.length; i++) {
				assertTrue(room.contains(x[i], y[i]) && room.metresToEdge(x[i], y[i]) >= 1.5 - 1e-9);
			}
		}
	}

	@Test
	void noticesARingThatCrossesOrTouchesItself() {
		assertFalse(L.crossesItself());
		assertTrue(polygon(0, 0, 4, 4, 4, 0, 0, 4).crossesItself(), "a bow");
		assertTrue(polygon(0, 0, 4, 0, 4, 4, 4, 1, 0, 4).crossesItself(), "a spike: back along the side just drawn");
		assertTrue(polygon(2, 0, 4, 0, 4, 4, 0, 4, 0, 0, 3, 0).crossesItself(), "at its end too");
		assertTrue(polygon(0, 0, 4, 0, 4, 4, 2, 0, 0, 4).crossesItself(), "a corner on another side");
		assertTrue(polygon(0, 0, 2, 2, 4, 0, 4, 4, 2, 2, 0, 4).crossesItself(), "two corners at one place");
		assertFalse(polygon(0, 0, 2, 0, 4, 0, 4, 4).crossesItself(), "a corner on a straight side");
		assertFalse(polygon(0, 0, 4, 0, 4, 0, 4, 4, 0, 4, 0, 0).crossesItself(),
				"a corner drawn twice, and the first one repeated");
		assertFalse(Polygon.rectangle(4_864_949, 1, 4_864_953, 5).crossesItself(), "far from the origin");
	}

	/** As java.awt.geom has it of each pair of sides that share no corner; three in a row never lie on one line here. */
	@Test
	void noticesCrossingsAsAnotherLibraryDoes() {
		Random dice = new Random(7302);
		int crossing = 0;
		for (int round = 0; round < 400; round++) {
			double[] corners = dice.doubles(2 * (3 + dice.nextInt(5)), 0, 10).toArray();
			int n = corners.length / 2;
			boolean expected = false;
			for (int i = 0; i < n; i++) {
				for (int j = i + 2; j < n && !(i == 0 && j == n - 1); j++) {
					int end = (j + 1) % n;
					expected |= Line2D.linesIntersect(corners[2 * i], corners[2 * i + 1], corners[2 * i + 2],
							corners[2 * i + 3], corners[2 * j],
							corners[2 * j + 1], corners[2 * end], corners[2 * end + 1]);
				}
			}
			assertEquals(expected, polygon(corners).crossesItself(), Arrays.toString(corners));
			crossing += expected ? 1 : 0;
		}
		assertTrue(crossing > 100 && crossing < 300, "crossing: " + crossing);
	}

	private static Polygon polygon(double... corners) {
		return new Polygon(IntStream.range(0, corners.length / 2).mapToDouble(i -> corners[2 * i]).toArray(),
				IntStream.range(0, corners.length / 2).mapToDouble(i -> corners[2 * i + 1]).toArray());
	}
}
