package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class KDistancesTest {

	private static final Workers HERE = Workers.inline();

	// The six points of scikit-learn's documentation of DBSCAN, distances worked apart.
	@Test
	void findsTheKthOtherSample() {
		double[][] six = { { 1, 2 }, { 2, 2 }, { 2, 3 }, { 8, 7 }, { 8, 8 }, { 25, 80 } };
		RadioMapBuilder builder = new RadioMapBuilder();
		for (double[] point : six) {
			builder.sample("Tide House", 0, 0, 0).reading("x", (int) point[0] - 110).reading("y", (int) point[1] - 110);
		}
		Signals signals = Signals.of(builder.build(), Representation.positive(), Distance.EUCLIDEAN);
		for (PointSet set : new PointSet[] { new DensePoints(six, Distance.EUCLIDEAN), PointSet.of(signals) }) {
			KDistances found = KDistances.of(set, HERE, 1, 2);
			assertArrayEquals(new double[] { 1, 1, 1, 1, 1, 73.979727 }, found.bySample(1), 1e-6);
			assertArrayEquals(new double[] { 1.414214, 1, 1.414214, 7.211103, 7.810250, 74.953319 },
					found.bySample(2), 1e-6);
		}
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void equalsSortingAllDistances(Distance kind) {
		int[] ks = { 0, 1, 2, 5, 9 };
		for (long seed = 1; seed <= 60; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 50), Representation.positive(), kind);
			double[][] matrix = DenseForm.of(signals).matrix();
			Arrays.stream(matrix).forEach(Arrays::sort);
			KDistances found = KDistances.of(signals, HERE, ks);
			for (int k : ks) {
				double[] expected = Arrays.stream(matrix).mapToDouble(row -> row[k]).toArray();
				assertArrayEquals(expected, found.bySample(k), "seed " + seed + ", k " + k);
				Arrays.sort(expected);
				assertArrayEquals(expected, found.sorted(k));
				assertArrayEquals(expected, KDistances.of(signals, HERE, k).sorted(k)); // alone as with others
			}
		}
	}

	@Test
	void isInfiniteWhereThereAreTooFewOthers() {
		PointSet two = new DensePoints(new double[][] { { 0 }, { 3 } }, Distance.CITY_BLOCK);
		KDistances found = KDistances.of(two, HERE, 1, 2);
		assertArrayEquals(new double[] { 3, 3 }, found.bySample(1));
		assertArrayEquals(new double[] { Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY }, found.bySample(2));
	}

	@Test
	void refusesWhatWasNotAskedFor() {
		PointSet two = new DensePoints(new double[][] { { 0 }, { 3 } }, Distance.CITY_BLOCK);
		assertThrows(IllegalArgumentException.class, () -> KDistances.of(two, HERE, 1, -1));
		KDistances one = KDistances.of(two, HERE, 1);
		assertThrows(IllegalArgumentException.class, () -> one.bySample(2));
	}

	@Test
	void handsOutCopies() {
		PointSet two = new DensePoints(new double[][] { { 0 }, { 3 } }, Distance.CITY_BLOCK);
		KDistances found = KDistances.of(two, HERE, 1);
		found.bySample(1)[0] = 7;
		assertEquals(3, found.bySample(1)[0]);
	}

	@ParameterizedTest
	@ValueSource(ints = { 2, 3 })
	void doesNotDependOnTheNumberOfThreads(int count) {
		Signals signals = Signals.of(ScatteredMap.of(3, 400));
		KDistances expected = KDistances.of(signals, HERE, 2, 4);
		try (Threads threads = new Threads(count)) {
			for (int run = 0; run < 5; run++) {
				KDistances found = KDistances.of(signals, threads.workers(), 2, 4);
				assertArrayEquals(expected.bySample(2), found.bySample(2));
				assertArrayEquals(expected.bySample(4), found.bySample(4));
			}
		}
	}
}
