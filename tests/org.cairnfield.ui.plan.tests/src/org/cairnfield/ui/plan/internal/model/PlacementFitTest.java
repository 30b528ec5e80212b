package org.cairnfield.ui.plan.internal.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.cairnfield.model.values.Placement;
import org.junit.jupiter.api.Test;

class PlacementFitTest {

	private static final Placement TRUE = new Placement(0.042, 37, -12.5, 88.25);

	private static ControlPoint exact(double column, double row) {
		return new ControlPoint(column, row, TRUE.xMetres(column, row), TRUE.yMetres(column, row));
	}

	private static void assertSame(Placement expected, Placement found, double within) {
		assertEquals(expected.metresPerPixel(), found.metresPerPixel(), within);
		assertEquals(expected.turnDegrees(), found.turnDegrees(), 100 * within);
		assertEquals(expected.xMetres(), found.xMetres(), 100 * within);
		assertEquals(expected.yMetres(), found.yMetres(), 100 * within);
	}

	@Test
	void findsThePlacementThatMadeThePoints() {
		PlacementFit fit = PlacementFit.of(List.of(exact(10, 20), exact(900, 50), exact(400, 700)));
		assertSame(TRUE, fit.placement(), 1e-10);
		assertEquals(0, fit.rmsMetres(), 1e-10);
	}

	@Test
	void twoPointsAlwaysFit() {
		PlacementFit fit = PlacementFit.of(List.of(new ControlPoint(0, 0, 3, 4), new ControlPoint(100, 0, 3, 9)));
		assertEquals(0.05, fit.placement().metresPerPixel(), 1e-12);
		assertEquals(90, fit.placement().turnDegrees(), 1e-9);
		assertEquals(List.of(0.0, 0.0), fit.residualsMetres().stream().map(r -> Math.rint(r * 1e9)).toList());
	}

	@Test
	void agreesWithTheExampleOfUmeyama() {
		// Umeyama 1991, section IV: X = (0,0) (1,0) (0,2), Y = (0,0) (-1,0) (0,2); value from memory: R = [0.832 0.555; -0.555 0.832],
		// c = 0.721, t = (-0.800, 0.400). Rows of an image count down, so its y is -row.
		PlacementFit fit = PlacementFit
				.of(List.of(new ControlPoint(0, 0, 0, 0), new ControlPoint(1, 0, -1, 0),
						new ControlPoint(0, -2, 0, 2)));
		assertEquals(0.721, fit.placement().metresPerPixel(), 5e-4);
		assertEquals(Math.toDegrees(Math.atan2(-0.555, 0.832)), fit.placement().turnDegrees(), 0.05);
		assertEquals(-0.800, fit.placement().xMetres(), 5e-4);
		assertEquals(0.400, fit.placement().yMetres(), 5e-4);
	}

	@Test
	void noOtherPlacementNearbyIsCloser() {
		Random random = new Random(8);
		List<ControlPoint> points = new ArrayList<>();
		for (int i = 0; i < 7; i++) {
			ControlPoint exact = exact(random.nextInt(1000), random.nextInt(800));
			points.add(new ControlPoint(exact.column(), exact.row(), exact.xMetres() + random.nextGaussian(),
					exact.yMetres() + random.nextGaussian()));
		}
		PlacementFit fit = PlacementFit.of(points);
		Placement p = fit.placement();
		double least = sum(p, points);
		assertEquals(Math.sqrt(least / 7), fit.rmsMetres(), 1e-9);
		for (int i = 0; i < 200; i++) {
			Placement other = new Placement(p.metresPerPixel() * (1 + 0.01 * random.nextGaussian()),
					p.turnDegrees() + random.nextGaussian(), p.xMetres() + random.nextGaussian(),
					p.yMetres() + random.nextGaussian());
			assertTrue(sum(other, points) > least);
		}
	}

	private static double sum(Placement placement, List<ControlPoint> points) {
		return points.stream()
				.mapToDouble(each -> Math.pow(placement.xMetres(each.column(), each.row()) - each.xMetres(), 2)
						+ Math.pow(placement.yMetres(each.column(), each.row()) - each.yMetres(), 2))
				.sum();
	}

	@Test
	void tellsWhyThereIsNone() {
		assertTrue(
				assertThrows(IllegalArgumentException.class, () -> PlacementFit.of(List.of(exact(1, 2)))).getMessage()
						.contains("two control points"));
		assertTrue(
				assertThrows(IllegalArgumentException.class, () -> PlacementFit.of(List.of(exact(1, 2), exact(1, 2))))
						.getMessage().contains("place of the image"));
		assertTrue(assertThrows(IllegalArgumentException.class,
				() -> PlacementFit.of(List.of(new ControlPoint(0, 0, 5, 5), new ControlPoint(9, 0, 5, 5)))).getMessage()
				.contains("place of the floor"));
	}
}
