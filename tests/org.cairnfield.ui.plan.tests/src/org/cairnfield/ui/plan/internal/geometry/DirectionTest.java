package org.cairnfield.ui.plan.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DirectionTest {

	// 0 1 2 at the bottom, 3 4 5 above them, 2 m apart
	private final double[] x = { 0, 2, 4, 0, 2, 4 };
	private final double[] y = { 0, 0, 0, 2, 2, 2 };

	@Test
	void walksRowsAndColumnsOfASurvey() {
		assertEquals(1, Direction.RIGHT.next(x, y, 0));
		assertEquals(2, Direction.RIGHT.next(x, y, 1));
		assertEquals(3, Direction.UP.next(x, y, 0));
		assertEquals(1, Direction.DOWN.next(x, y, 4));
		assertEquals(3, Direction.LEFT.next(x, y, 4));
	}

	@Test
	void stopsAtTheEdge() {
		assertEquals(-1, Direction.LEFT.next(x, y, 0));
		assertEquals(-1, Direction.UP.next(x, y, 5));
	}

	@Test
	void rathersANearPointSlightlyAsideThanAFarOneStraightAhead() {
		assertEquals(1, Direction.RIGHT.next(new double[] { 0, 1, 10 }, new double[] { 0, 0.5, 0 }, 0));
	}

	@Test
	void doesNotTakeWhatIsMoreAsideThanAhead() {
		assertEquals(-1, Direction.RIGHT.next(new double[] { 0, 1 }, new double[] { 0, 5 }, 0));
	}

	@Test
	void passesOverPointsAtTheSamePlace() {
		assertEquals(2, Direction.RIGHT.next(new double[] { 3, 3, 4 }, new double[] { 1, 1, 1 }, 0));
	}
}
