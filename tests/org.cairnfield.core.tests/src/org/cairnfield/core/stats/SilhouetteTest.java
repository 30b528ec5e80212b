package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

/** Expected values from the formula of Rousseeuw 1987, worked by hand on points of a line. */
class SilhouetteTest {

	@Test
	void measuresTwoPairs() {
		Silhouette found = of(points(0, 1, 4, 5), 0, 0, 1, 1);
		assertValues(found, 7 / 9.0, 5 / 7.0, 5 / 7.0, 7 / 9.0);
		assertEquals(.746031746, found.mean(), 1e-9);
	}

	@Test
	void givesZeroToASampleAloneInItsCluster() {
		Silhouette found = of(points(0, 1, 4, 5, 10), 0, 0, 1, 1, 2);
		assertValues(found, 7 / 9.0, 5 / 7.0, 5 / 7.0, 7 / 9.0, 0);
		assertEquals(.596825397, found.mean(), 1e-9);
	}

	@Test
	void isNegativeForASampleInTheWrongCluster() {
		Silhouette found = of(points(0, 1, 4, 5), 0, 0, 0, 1);
		assertValues(found, .5, .5, -5 / 7.0, 0);
		assertEquals(.071428571, found.mean(), 1e-9);
	}

	@Test
	void leavesNoiseOut() {
		Silhouette found = of(points(0, 1, 4, 5, 2), 7, 7, 3, 3, -1);
		assertValues(found, 7 / 9.0, 5 / 7.0, 5 / 7.0, 7 / 9.0, Double.NaN);
		assertEquals(.746031746, found.mean(), 1e-9);
	}

	@Test
	void isUndefinedForOneCluster() {
		Silhouette found = of(points(0, 1, 4), 0, 0, -1);
		assertTrue(Double.isNaN(found.mean()));
		assertTrue(Double.isNaN(found.value(0)));
	}

	@Test
	void isZeroWhereAllSamplesCoincide() {
		assertEquals(0, of(points(3, 3, 3, 3), 0, 0, 1, 1).mean(), 0);
	}

	@Test
	void doesNotDependOnTheNumberOfThreads() {
		Random random = new Random(3);
		double[] points = random.doubles(400).toArray();
		int[] labels = random.ints(400, -1, 5).toArray();
		PairDistance distance = (a, b) -> Math.abs(points[a] - points[b]);
		ExecutorService threads = Executors.newFixedThreadPool(3);
		try {
			Silhouette parallel = Silhouette.of(labels, distance, Workers.on(threads, 4, Progress.NONE));
			Silhouette single = Silhouette.of(labels, distance, Workers.inline());
			assertEquals(single.mean(), parallel.mean(), 0);
			assertEquals(0, single.mean(), 0.2);
		} finally {
			threads.shutdown();
		}
	}

	private static void assertValues(Silhouette found, double... expected) {
		for (int i = 0; i < expected.length; i++) {
			assertEquals(expected[i], found.value(i), 1e-12, "sample " + i);
		}
	}

	private static double[] points(double... points) {
		return points;
	}

	private static Silhouette of(double[] points, int... labels) {
		return Silhouette.of(labels, (a, b) -> Math.abs(points[a] - points[b]), Workers.inline());
	}
}
