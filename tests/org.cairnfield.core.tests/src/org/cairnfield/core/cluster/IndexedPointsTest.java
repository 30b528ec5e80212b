package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.TreeMap;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

/** The index against whole rows of distances. */
class IndexedPointsTest {

	private static final Workers HERE = Workers.inline();

	@Test
	void findsWhatWholeRowsFindOnMapsByChance() {
		for (long seed = 1; seed <= 500; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 40 + (int) seed % 30));
			compare(signals, new double[] { 0, seed % 90, 3.5 * (seed % 60), 500, Double.POSITIVE_INFINITY });
		}
	}

	@Test
	void findsWhatWholeRowsFindOnASimulatedCampus() {
		for (CampusSize size : new CampusSize[] { CampusSize.of(2, 2, 60), CampusSize.of(3, 1, 45).apart() }) {
			Signals signals = Signals.of(RandomMap.of(7, size, 240, HERE));
			compare(signals, new double[] { 40, 120, 900 });
		}
	}

	@Test
	void samplesOfEqualReadingsAreOnePoint() {
		int[] thrice = new int[90];
		Arrays.setAll(thrice, i -> i % 30);
		Signals once = Signals.of(ScatteredMap.of(12, 30));
		Signals signals = Signals.of(once.map().view(thrice));
		PointSet points = PointSet.of(signals);
		assertEquals(PointSet.of(once).size(), points.size());
		int samples = 0;
		for (int p = 0; p < points.size(); p++) {
			assertTrue(points.weight(p) >= 3);
			for (int i = 0; i < points.weight(p); i++) {
				assertEquals(p, points.pointOf(points.sample(p, i)));
				assertTrue(i == 0 || points.sample(p, i - 1) < points.sample(p, i));
				samples++;
			}
		}
		assertEquals(90, samples);
		compare(signals, new double[] { 0, 50, 200 });
	}

	@Test
	void thereIsNoIndexForOtherDistancesAndValues() {
		Signals euclidean = Signals.of(ScatteredMap.of(3, 20), Representation.positive(), Distance.EUCLIDEAN);
		Signals powed = Signals.of(ScatteredMap.of(3, 20), Representation.powed(2), Distance.CITY_BLOCK);
		assertTrue(euclidean.index().isEmpty() && powed.index().isEmpty());
		assertEquals(20, PointSet.of(euclidean).size());
	}

	private static void compare(Signals signals, double[] reaches) {
		PointSet rows = new RowPoints(signals);
		PointSet indexed = PointSet.of(signals);
		assertTrue(indexed instanceof IndexedPoints);
		PointSet.Surroundings byRow = rows.surroundings();
		PointSet.Surroundings byIndex = indexed.surroundings();
		double[] expectedDistances = new double[7];
		double[] distances = new double[7];
		for (int s = 0; s < signals.size(); s++) {
			int point = indexed.pointOf(s);
			for (double reach : reaches) {
				TreeMap<Integer, Double> expected = samples(rows, byRow.within(s, reach));
				expected.keySet().removeIf(other -> indexed.pointOf(other) == point);
				assertEquals(expected, samples(indexed, byIndex.within(point, reach)));
				expected.keySet().removeIf(other -> indexed.pointOf(other) > point);
				assertEquals(expected, samples(indexed, byIndex.before(point, reach)));
			}
			byRow.nearest(s, expectedDistances);
			byIndex.nearest(point, distances);
			assertArrayEquals(expectedDistances, distances);
		}
	}

	private static TreeMap<Integer, Double> samples(PointSet points, Found found) {
		TreeMap<Integer, Double> samples = new TreeMap<>();
		for (int i = 0; i < found.size(); i++) {
			for (int k = 0; k < points.weight(found.point(i)); k++) {
				assertEquals(null, samples.put(points.sample(found.point(i), k), found.distance(i)), "found twice");
			}
		}
		return samples;
	}
}
