package org.cairnfield.ui.plan.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CameraTest {

	private final Camera camera = new Camera(20, 100, 500);

	@Test
	void putsXToTheRightAndYUp() {
		assertEquals(140, camera.column(2));
		assertEquals(440, camera.row(3));
		assertEquals(2, camera.xMetres(140));
		assertEquals(3, camera.yMetres(440));
	}

	@Test
	void zoomKeepsWhatIsUnderThePointer() {
		Camera closer = camera.zoomed(1.7, 333, 222);
		assertEquals(34, closer.pixelsPerMetre(), 1e-12);
		assertEquals(333, closer.column(camera.xMetres(333)), 0.5);
		assertEquals(222, closer.row(camera.yMetres(222)), 0.5);
	}

	@Test
	void zoomStopsAtItsLimits() {
		assertEquals(Camera.MOST_PIXELS_PER_METRE, camera.zoomed(1e9, 0, 0).pixelsPerMetre());
		assertEquals(Camera.LEAST_PIXELS_PER_METRE, camera.zoomed(1e-9, 0, 0).pixelsPerMetre());
	}

	@Test
	void panMovesTheFloorWithThePointer() {
		assertEquals(camera.column(1) + 7, camera.panned(7, -3).column(1));
		assertEquals(camera.row(1) - 3, camera.panned(7, -3).row(1));
	}

	@Test
	void fitShowsAllInTheMiddleAsLargeAsItGoes() {
		Camera fit = Camera.fitting(new Bounds(10, 20, 50, 40), 848, 700, 24);
		assertEquals(20, fit.pixelsPerMetre()); // 800 pixels for 40 m
		assertEquals(24, fit.column(10), 0.5);
		assertEquals(824, fit.column(50), 0.5);
		assertEquals(350, fit.row(30), 0.5);
	}

	@Test
	void fitOfOnePointOrNothingStaysInLimits() {
		assertTrue(
				Camera.fitting(new Bounds(5, 5, 5, 5), 400, 300, 10).pixelsPerMetre() <= Camera.MOST_PIXELS_PER_METRE);
		assertEquals(200, Camera.fitting(Bounds.EMPTY, 400, 300, 10).column(0), 0.5);
	}

	@Test
	void visibleIsWhatTheCornersShow() {
		Bounds seen = camera.visible(200, 100);
		assertEquals(camera.xMetres(0), seen.left());
		assertEquals(camera.yMetres(100), seen.bottom());
		assertEquals(camera.xMetres(200), seen.right());
		assertEquals(camera.yMetres(0), seen.top());
	}
}
