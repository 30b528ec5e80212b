package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DensePointsTest {

	@Test
	void measuresBothDistances() {
		double[][] points = { { 0, 0 }, { 3, -4 } };
		assertEquals(Map.of(1, 7.0), visited(new DensePoints(points, Distance.CITY_BLOCK), 0, 7));
		assertEquals(Map.of(1, 5.0), visited(new DensePoints(points, Distance.EUCLIDEAN), 0, 5));
		assertEquals(Map.of(), visited(new DensePoints(points, Distance.EUCLIDEAN), 0, 4.999));
	}

	/** Samples and points visit the same, whatever component a sample is in. */
	@ParameterizedTest
	@EnumSource(Distance.class)
	void visitsWhatTheSamplesOfAMapVisit(Distance kind) {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 40), Representation.positive(), kind);
			PointSet points = new DensePoints(DenseForm.of(signals).values(), kind);
			for (double reach : new double[] { 0, 20, 90, 400, Double.POSITIVE_INFINITY }) {
				for (int s = 0; s < 40; s++) {
					assertEquals(visited(points, s, reach), visited(PointSet.of(signals), s, reach));
				}
			}
		}
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void followsAReachThatShrinks(Distance kind) {
		Signals signals = Signals.of(ScatteredMap.of(6, 40), Representation.positive(), kind);
		for (PointSet set : List.of(PointSet.of(signals), new DensePoints(DenseForm.of(signals).values(), kind))) {
			for (int s = 0; s < 40; s++) {
				List<Double> seen = new ArrayList<>();
				set.surroundings().visit(s, Double.POSITIVE_INFINITY, (other, d) -> {
					seen.add(d);
					return d;
				});
				for (int i = 1; i < seen.size(); i++) {
					assertEquals(Math.min(seen.get(i - 1), seen.get(i)), seen.get(i));
				}
			}
		}
	}

	private static Map<Integer, Double> visited(PointSet set, int point, double reach) {
		Map<Integer, Double> visited = new TreeMap<>();
		set.surroundings().visit(point, reach, (other, d) -> {
			assertEquals(null, visited.put(other, d));
			return reach;
		});
		return visited;
	}
}
