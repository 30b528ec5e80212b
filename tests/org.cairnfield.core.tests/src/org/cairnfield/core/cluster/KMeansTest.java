package org.cairnfield.core.cluster;

import static org.cairnfield.core.cluster.ClusteringAssert.numberedByFirst;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.KMeans.Start;
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

class KMeansTest {

	private static final Workers HERE = Workers.inline();

	private static KMeans.Points all(Signals signals) {
		return KMeans.points(signals, IntStream.range(0, signals.size()).toArray());
	}

	private static Signals line(int... levels) {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int level : levels) {
			b.sample("Tide House", 0, 0, 0).reading("a", level);
		}
		return Signals.of(b.build());
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void tellsTwoGroupsApartWhateverTheSeed(long seed) {
		Clustering found = KMeans.cluster(all(line(-80, -40, -81, -42, -79, -80, -41)), 2, seed, HERE);
		assertArrayEquals(new int[] { 0, 1, 0, 1, 0, 0, 1 }, found.labels());
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void labelsEverySampleAndNumbersByTheFirst(Distance kind) {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 70), Representation.positive(), kind);
			for (int k : new int[] { 1, 2, 9, 70, 500 }) {
				Clustering found = KMeans.cluster(all(signals), k, seed, HERE);
				assertEquals(70, found.size());
				assertEquals(0, found.noise());
				assertTrue(found.clusters() <= Math.min(k, 70) && found.clusters() >= 1);
				assertArrayEquals(numberedByFirst(found.labels()), found.labels());
				assertTrue(Arrays.stream(found.sizes()).allMatch(size -> size > 0));
			}
		}
	}

	/** Lloyd's rounds end where every point is nearest to the mean of its own cluster. */
	@ParameterizedTest
	@EnumSource(Distance.class)
	void endsWhereEverySampleIsNearestToItsOwnMean(Distance kind) {
		int ended = 0;
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 60), Representation.positive(), kind);
			Clustering found = KMeans.cluster(all(signals), 4, seed, HERE);
			Centroids means = Centroids.of(signals, found.members(), Centroids.Kind.MEAN);
			double[] d = new double[means.size()];
			boolean stays = true;
			for (int s = 0; s < 60; s++) {
				means.distances(signals.rows(), s, d);
				stays &= d[found.label(s)] <= Arrays.stream(d).min().orElseThrow();
			}
			ended += stays ? 1 : 0;
		}
		assertTrue(ended >= 19, ended + " of 20"); // rounds are bounded, so one may stop short
	}

	@Test
	void lowersTheSumOfSquaresBelowThatOfChanceLabels() {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 60), Representation.positive(), Distance.EUCLIDEAN);
			Clustering found = KMeans.cluster(all(signals), 4, seed, HERE);
			int[] chance = IntStream.range(0, 60).map(s -> s % 4).toArray();
			assertTrue(squares(signals, found) < 0.9 * squares(signals, new Clustering(chance, null)), "seed " + seed);
			assertTrue(squares(signals, found) <= squares(signals, KMeans.cluster(all(signals), 1, seed, HERE)));
		}
	}

	private static double squares(Signals signals, Clustering clustering) {
		Centroids means = Centroids.of(signals, clustering.members(), Centroids.Kind.MEAN);
		double[] d = new double[means.size()];
		double sum = 0;
		for (int s = 0; s < clustering.size(); s++) {
			means.distances(signals.rows(), s, d);
			sum += d[clustering.label(s)] * d[clustering.label(s)];
		}
		return sum;
	}

	@Test
	void isTheSameForTheSameSeedAndAnyNumberOfThreads() {
		Signals signals = Signals.of(ScatteredMap.of(3, 300));
		int[] expected = KMeans.cluster(all(signals), 12, 5, HERE).labels();
		for (int count = 1; count <= 3; count++) {
			try (Threads threads = new Threads(count)) {
				for (int run = 0; run < 4; run++) {
					assertArrayEquals(expected, KMeans.cluster(all(signals), 12, 5, threads.workers()).labels());
				}
			}
		}
		assertFalse(Arrays.equals(expected, KMeans.cluster(all(signals), 12, 6, HERE).labels()));
	}

	@Test
	void clustersSomeSamplesOnly() {
		Signals signals = line(-80, -40, -81, -42, -60);
		Clustering found = KMeans.cluster(KMeans.points(signals, new int[] { 3, 0, 1, 2 }), 2, 1, HERE);
		assertArrayEquals(new int[] { 0, 1, 0, 1 }, found.labels());
	}

	@Test
	void clustersCentroids() {
		Signals signals = line(-80, -40, -81, -42, -79, -41);
		int[][] cells = { { 0 }, { 1 }, { 2, 4 }, { 3, 5 } };
		Centroids centroids = Centroids.of(signals, cells, Centroids.Kind.MEAN);
		assertArrayEquals(new int[] { 0, 1, 0, 1 }, KMeans.cluster(KMeans.points(centroids), 2, 1, HERE).labels());
	}

	@Test
	void putsIdenticalSamplesIntoOneCluster() {
		assertEquals(1, KMeans.cluster(all(line(-50, -50, -50)), 3, 1, HERE).clusters());
	}

	@Test
	void takesNoSamplesAndRefusesNoClusters() {
		Signals nothing = Signals.of(new RadioMapBuilder().build());
		assertEquals(0, KMeans.cluster(all(nothing), 3, 1, HERE).size());
		Signals one = line(-50);
		assertThrows(IllegalArgumentException.class, () -> KMeans.cluster(all(one), 0, 1, HERE));
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void spreadCentresStartInEveryGroup(long seed) {
		Signals far = line(-80, -80, -80, -80, -80, -80, -60, -60, -40);
		assertArrayEquals(new int[] { 0, 0, 0, 0, 0, 0, 1, 1, 2 },
				KMeans.cluster(all(far), 3, Start.SPREAD, seed, HERE).labels());
	}

	@Test
	void spreadCentresAreNoMoreThanDistinctPoints() {
		assertEquals(2, KMeans.cluster(all(line(-50, -50, -50, -60)), 4, Start.SPREAD, 1, HERE).clusters());
	}

	/** Arthur and Vassilvitskii 2007: a smaller sum of squares on average than centres drawn by chance. */
	@Test
	void spreadCentresLeaveSmallerSquares() {
		double spread = 0;
		double chance = 0;
		for (long seed = 1; seed <= 40; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 90), Representation.positive(), Distance.EUCLIDEAN);
			spread += squares(signals, KMeans.cluster(all(signals), 8, Start.SPREAD, seed, HERE));
			chance += squares(signals, KMeans.cluster(all(signals), 8, Start.CHANCE, seed, HERE));
		}
		assertTrue(spread < 0.95 * chance, spread + " and " + chance);
	}

	/** Of rows that say all that the signals do, the clusters are those of the signals. */
	@ParameterizedTest
	@EnumSource(Distance.class)
	void clustersFullRowsLikeSignals(Distance kind) {
		for (long seed = 1; seed <= 10; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 60), Representation.positive(), kind);
			double[][] rows = new double[60][signals.map().accessPointCount()];
			for (int s = 0; s < 60; s++) {
				for (int k = signals.rows().start(s); k < signals.rows().end(s); k++) {
					rows[s][signals.rows().column(k)] = signals.value(signals.rows().step(k));
				}
			}
			for (Start start : Start.values()) {
				assertArrayEquals(KMeans.cluster(all(signals), 6, start, seed, HERE).labels(),
						KMeans.cluster(KMeans.points(rows, kind), 6, start, seed, HERE).labels());
			}
		}
	}

	@Test
	void spreadCentresAreTheSameForAnyNumberOfThreads() {
		Signals signals = Signals.of(ScatteredMap.of(3, 300));
		int[] expected = KMeans.cluster(all(signals), 12, Start.SPREAD, 5, HERE).labels();
		try (Threads threads = new Threads(3)) {
			assertArrayEquals(expected, KMeans.cluster(all(signals), 12, Start.SPREAD, 5, threads.workers()).labels());
		}
	}
}
