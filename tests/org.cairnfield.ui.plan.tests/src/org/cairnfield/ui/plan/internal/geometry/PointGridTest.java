package org.cairnfield.ui.plan.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Random;

import org.junit.jupiter.api.Test;

class PointGridTest {

	private static final int POINTS = 3000;

	private final Random random = new Random(4);
	private final double[] x = random.doubles(POINTS, -40, 90).toArray();
	private final double[] y = random.doubles(POINTS, 5, 30).toArray();
	private final PointGrid grid = new PointGrid(x, y);

	@Test
	void findsTheSamePointsInARectangleAsLookingAtAll() {
		for (int trial = 0; trial < 200; trial++) {
			Bounds wanted = Bounds.between(random.nextDouble(-60, 110), random.nextDouble(0, 35),
					random.nextDouble(-60, 110),
					random.nextDouble(0, 35));
			BitSet expected = new BitSet();
			for (int i = 0; i < POINTS; i++) {
				if (wanted.contains(x[i], y[i])) {
					expected.set(i);
				}
			}
			BitSet found = new BitSet();
			grid.within(wanted, found::set);
			assertEquals(expected, found, () -> "in " + wanted);
		}
	}

	@Test
	void findsTheNearestWithinADistance() {
		for (int trial = 0; trial < 200; trial++) {
			double atX = random.nextDouble(-60, 110);
			double atY = random.nextDouble(0, 35);
			int expected = -1;
			double least = 2;
			for (int i = 0; i < POINTS; i++) {
				double distance = Math.hypot(x[i] - atX, y[i] - atY);
				if (distance < least) {
					least = distance;
					expected = i;
				}
			}
			assertEquals(expected, grid.nearest(atX, atY, 2));
		}
	}

	@Test
	void takesTheTopmostOfPointsAtOnePlace() {
		assertEquals(2, new PointGrid(new double[] { 1, 1, 1 }, new double[] { 3, 3, 3 }).nearest(1, 3, 0.5));
	}

	@Test
	void hasNothingToFindWithoutPoints() {
		assertEquals(-1, new PointGrid(new double[0], new double[0]).nearest(0, 0, 1e6));
	}

	@Test
	void bearsOnePointFarFromAllOthers() {
		double[] far = { 0, 1, 2, 1e9 };
		assertEquals(3, new PointGrid(far, new double[] { 0, 0, 0, -1e9 }).nearest(1e9, -1e9, 1));
	}
}
