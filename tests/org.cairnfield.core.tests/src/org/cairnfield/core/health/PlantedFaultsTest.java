package org.cairnfield.core.health;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultKind;
import org.cairnfield.core.simulate.Planting;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How well the figures find what was planted. Bounds lie well below what was measured (in brackets). */
class PlantedFaultsTest {

	private static double area(Planting.Planted planted, IntToDoubleFunction figure, FaultKind... kinds) {
		boolean[] any = planted.isBad();
		boolean[] wanted = planted.isBad(kinds);
		int count = 0;
		double[] scores = new double[any.length];
		boolean[] bad = new boolean[any.length];
		for (int s = 0; s < any.length; s++) {
			if (!any[s] || wanted[s]) {
				double value = figure.applyAsDouble(s);
				scores[count] = Double.isNaN(value) ? Double.NEGATIVE_INFINITY : value;
				bad[count++] = wanted[s];
			}
		}
		return Roc.area(Arrays.copyOf(scores, count), Arrays.copyOf(bad, count));
	}

	private static void assertFinds(double atLeast, double area, String what) {
		assertTrue(area >= atLeast, what + ": area " + area);
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void figuresFindWhatTheyAreFor(long seed) {
		Planting.Planted planted = new Planting(0.02, 0.005, 0.02, 0.005, 0, 0)
				.plant(RandomMap.of(seed, CampusSize.of(2, 3, 120), 3000, Workers.inline()), seed);
		SampleHealth health = SampleHealth.of(planted.map(), Workers.inline());
		assertFinds(0.95, area(planted, health::nearestErrorMetres, FaultKind.WRONG_POSITION), "nearest (0.99)");
		assertFinds(0.98, area(planted, health::medianErrorMetres, FaultKind.WRONG_POSITION), "median (1.00)");
		assertFinds(0.97, area(planted, health::floorDisagreement, FaultKind.WRONG_FLOOR), "floor vote (1.00)");
		assertFinds(0.95, area(planted, s -> 1 - health.overlap(s), FaultKind.WRONG_POSITION), "overlap (0.99)");
		assertFinds(0.97, area(planted, health::levelDeficitDb, FaultKind.FAULTY_DEVICE), "deficit (1.00)");
		assertFinds(0.95, area(planted, health::levelScatterDb, FaultKind.PERMUTED_READINGS), "scatter (1.00)");
		assertFinds(0.8, area(planted, health::nearestDistance, FaultKind.PERMUTED_READINGS), "distance (0.89)");
		assertFinds(0.92, area(planted, health::placeScore), "place (0.96)");
		assertFinds(0.97, area(planted, health::readingsScore), "readings (0.996)");
		assertFinds(0.97, area(planted, health::score), "score (0.996)");
	}
}
