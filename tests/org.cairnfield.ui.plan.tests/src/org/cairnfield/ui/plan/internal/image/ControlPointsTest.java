package org.cairnfield.ui.plan.internal.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.model.values.Placement;
import org.junit.jupiter.api.Test;

class ControlPointsTest {

	private final ControlPoints points = new ControlPoints();

	private ControlPoints.Entry point(double column, double row, double x, double y) {
		ControlPoints.Entry entry = points.add(column, row);
		points.xMetres(entry, x);
		points.yMetres(entry, y);
		return entry;
	}

	@Test
	void saysWhatIsMissing() {
		assertTrue(points.message().startsWith("Click at least two points"));
		point(0, 0, 0, 10);
		points.add(100, 0);
		assertTrue(points.message().startsWith("Give x and y"));
		assertTrue(points.placement().isEmpty());
	}

	@Test
	void placesTheImageOnceTwoPointsAreKnown() {
		point(0, 0, 1, 20);
		point(200, 0, 11, 20);
		Placement placement = points.placement().orElseThrow();
		assertEquals(0.05, placement.metresPerPixel(), 1e-12);
		assertEquals(0, placement.turnDegrees(), 1e-9);
		assertTrue(points.message().contains("Two points always fit"));
	}

	@Test
	void proposesWhereAFurtherPointIs() {
		point(0, 0, 1, 20);
		point(200, 0, 11, 20);
		ControlPoints.Entry third = points.add(100, 100);
		assertEquals(6, third.xMetres());
		assertEquals(15, third.yMetres());
	}

	@Test
	void tellsHowFarPointsAreOff() {
		point(0, 0, 0, 10);
		point(200, 0, 10, 10);
		ControlPoints.Entry wrong = point(200, 200, 10, 0.6);
		// 0.6 m off, of which the fit takes 1/3 by the shift and 22222/53333 by turn and scale (leverage of the point)
		assertEquals(0.6 * (1 - 1 / 3.0 - 22222 / 53333.0), points.residualMetres(wrong), 1e-4);
		assertTrue(points.message().contains("root mean square"));
		points.remove(wrong);
		assertEquals(2, points.entries().size());
		assertTrue(points.message().contains("Two points always fit"));
	}

	@Test
	void doesNotPlaceByTwoPointsAtOnePlace() {
		point(50, 50, 0, 10);
		point(50, 50, 10, 10);
		assertFalse(points.placement().isPresent());
		assertTrue(points.message().startsWith("No placement yet"));
	}
}
