package org.cairnfield.ui.plan.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;

import org.junit.jupiter.api.Test;

class LassoTest {

	private static Lasso of(double... corners) {
		Lasso lasso = new Lasso();
		for (int i = 0; i < corners.length; i += 2) {
			lasso.to(corners[i], corners[i + 1]);
		}
		return lasso;
	}

	private static boolean encloses(Lasso lasso, double column, double row) {
		double[] x = { column };
		double[] y = { -row }; // y up, and row 0 at the top
		return lasso.inside(new PointGrid(x, y), x, y, new Camera(1, 0, 0)).get(0);
	}

	@Test
	void closesItselfRoundWhatIsInside() {
		Lasso lasso = of(0, 0, 100, 0, 100, 100, 0, 100);
		assertTrue(encloses(lasso, 50, 50));
		assertFalse(encloses(lasso, 150, 50));
		assertFalse(encloses(lasso, 50, -1));
	}

	@Test
	void leavesOutADent() {
		Lasso lasso = of(0, 0, 50, 80, 100, 0, 100, 100, 0, 100);
		assertFalse(encloses(lasso, 50, 40));
		assertTrue(encloses(lasso, 50, 90));
		assertTrue(encloses(lasso, 10, 50));
	}

	@Test
	void isNothingBeforeItEnclosesSomething() {
		assertFalse(encloses(of(10, 10), 10, 10));
		assertFalse(encloses(of(0, 0, 100, 100), 50, 50));
	}

	@Test
	void leavesOutStepsTooSmallToSee() {
		assertEquals(2, of(0, 0, 1, 1, 0, 1, 30, 0).size());
	}

	@Test
	void selectsPointsThroughTheCamera() {
		double[] x = { 1, 2, 9 };
		double[] y = { 1, 8, 1 };
		Camera camera = new Camera(10, 0, 100); // y up: (1, 1) is at pixel (10, 90)
		BitSet inside = of(0, 80, 30, 80, 30, 100, 0, 100).inside(new PointGrid(x, y), x, y, camera);
		assertEquals(BitSet.valueOf(new long[] { 1 }), inside);
	}
}
