package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

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
	void findsTheDistancesThatTheSamplesOfAMapFind(Distance kind) {
		Signals signals = Signals.of(ScatteredMap.of(6, 40), Representation.positive(), kind);
		PointSet ofMap = PointSet.of(signals);
		PointSet points = new DensePoints(DenseForm.of(signals).values(), kind);
		for (int length : new int[] { 1, 4, 39, 45 }) {
			for (int s = 0; s < 40; s++) {
				double[] expected = new double[length];
				double[] found = new double[length];
				points.surroundings().nearest(s, expected);
				ofMap.surroundings().nearest(ofMap.pointOf(s), found);
				assertArrayEquals(expected, found);
			}
		}
	}

	/** By sample, those at the sample's own point included; before and after it alike. */
	private static Map<Integer, Double> visited(PointSet set, int sample, double reach) {
		Map<Integer, Double> visited = new TreeMap<>();
		int point = set.pointOf(sample);
		PointSet.Surroundings around = set.surroundings();
		add(set, around.within(point, reach), visited);
		Map<Integer, Double> earlier = new TreeMap<>();
		add(set, around.before(point, reach), earlier);
		Map<Integer, Double> smaller = new TreeMap<>(visited);
		smaller.keySet().removeIf(other -> set.pointOf(other) > point);
		assertEquals(smaller, earlier);
		for (int i = 0; i < set.weight(point); i++) {
			if (set.sample(point, i) != sample) {
				visited.put(set.sample(point, i), 0.0);
			}
		}
		return visited;
	}

	private static void add(PointSet set, Found found, Map<Integer, Double> visited) {
		for (int i = 0; i < found.size(); i++) {
			for (int k = 0; k < set.weight(found.point(i)); k++) {
				assertEquals(null, visited.put(set.sample(found.point(i), k), found.distance(i)));
			}
		}
	}
}
