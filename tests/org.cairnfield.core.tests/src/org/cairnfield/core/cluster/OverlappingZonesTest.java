package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OverlappingZonesTest {

	private static final Workers HERE = Workers.inline();
	private static final int SAMPLES = 80;

	private static KMeans.Points all(Signals signals) {
		return KMeans.points(signals, IntStream.range(0, signals.size()).toArray());
	}

	private static double[][] distances(Signals signals, Clustering clustering) {
		Centroids means = Centroids.of(signals, clustering.members(), Centroids.Kind.MEAN);
		double[][] distances = new double[signals.size()][means.size()];
		for (int s = 0; s < distances.length; s++) {
			means.distances(signals.rows(), s, distances[s]);
		}
		return distances;
	}

	/** τ = 0, wherever k-means has ended and no sample is equally near to two centres. */
	@ParameterizedTest
	@EnumSource(Distance.class)
	void areTheClustersWhereNothingMayBeFarther(Distance kind) {
		int compared = 0;
		for (long seed = 1; seed <= 40; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.positive(), kind);
			Clustering found = KMeans.cluster(all(signals), 5, KMeans.Start.SPREAD, seed, HERE);
			double[][] d = distances(signals, found);
			boolean clear = IntStream.range(0, SAMPLES)
					.allMatch(s -> Arrays.stream(d[s]).filter(x -> x <= d[s][found.label(s)]).count() == 1);
			if (clear) {
				OverlappingZones zones = OverlappingZones.of(all(signals), found, 0, HERE);
				assertArrayEquals(found.members(), zones.members());
				assertEquals(1, zones.zonesPerSample());
				compared++;
			}
		}
		assertTrue(compared >= 30, compared + " of 40");
	}

	@Test
	void holdEverySampleEachWhereAnythingMayBeFarther() {
		Signals signals = Signals.of(ScatteredMap.of(2, SAMPLES));
		Clustering found = KMeans.cluster(all(signals), 7, 1, HERE);
		OverlappingZones zones = OverlappingZones.of(all(signals), found, Double.POSITIVE_INFINITY, HERE);
		for (int[] members : zones.members()) {
			assertArrayEquals(IntStream.range(0, SAMPLES).toArray(), members);
		}
		assertEquals(found.clusters(), zones.zonesPerSample());
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void holdSamplesThatAreHardlyFartherAndTheirOwn(Distance kind) {
		int beyond = 0;
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.positive(), kind);
			Clustering found = KMeans.cluster(all(signals), 6, seed, HERE);
			double[][] d = distances(signals, found);
			for (double tau : new double[] { 0.1, 0.5, 2 }) {
				int[][] members = OverlappingZones.of(all(signals), found, tau, HERE).members();
				for (int c = 0; c < found.clusters(); c++) {
					int zone = c;
					int[] expected = IntStream.range(0, SAMPLES).filter(s -> found.label(s) == zone
							|| d[s][zone] <= (1 + tau) * Arrays.stream(d[s]).min().orElseThrow()).toArray();
					assertArrayEquals(expected, members[c]);
					beyond += expected.length - found.sizes()[c];
				}
			}
		}
		assertTrue(beyond > 1000, beyond + " beyond their clusters");
	}

	@Test
	void growWithTau() {
		Signals signals = Signals.of(ScatteredMap.of(9, SAMPLES));
		Clustering found = KMeans.cluster(all(signals), 6, 1, HERE);
		double before = 0;
		for (double tau : new double[] { 0, 0.2, 0.4, 1, 4, Double.POSITIVE_INFINITY }) {
			double now = OverlappingZones.of(all(signals), found, tau, HERE).zonesPerSample();
			assertTrue(now >= before && now >= 1, now + " after " + before);
			before = now;
		}
	}

	@Test
	void areTheSameForAnyNumberOfThreads() {
		Signals signals = Signals.of(ScatteredMap.of(3, 300));
		Clustering found = KMeans.cluster(all(signals), 12, 5, HERE);
		int[][] expected = OverlappingZones.of(all(signals), found, 0.3, HERE).members();
		try (Threads threads = new Threads(3)) {
			assertArrayEquals(expected, OverlappingZones.of(all(signals), found, 0.3, threads.workers()).members());
		}
	}

	@Test
	void refuseATauBelowNothing() {
		Signals signals = Signals.of(ScatteredMap.of(3, 10));
		Clustering found = KMeans.cluster(all(signals), 2, 5, HERE);
		assertThrows(IllegalArgumentException.class, () -> OverlappingZones.of(all(signals), found, -0.1, HERE));
		assertThrows(IllegalArgumentException.class, () -> OverlappingZones.of(all(signals), found, Double.NaN, HERE));
	}
}
