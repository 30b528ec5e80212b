package org.cairnfield.core.correlate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class NoiseCorrelationTest {

	private static final double TOLERANCE = 1e-9;
	private static final Workers HERE = Workers.inline();

	static Stream<Arguments> all() {
		return Stream.of("positive", "normalised", "exponential", "powed")
				.flatMap(r -> Arrays.stream(Distance.values()).map(d -> Arguments.of(r, d)));
	}

	@ParameterizedTest
	@MethodSource("all")
	void equalsTheBruteFormOnMapsByChance(String representation, Distance kind) {
		int placed = 0;
		int components = 0;
		for (long seed = 1; seed <= 40; seed++) {
			RadioMap map = ScatteredMap.of(seed, 45);
			Signals signals = Signals.of(map, Representation.named(representation), kind);
			DenseCorrelation brute = new DenseCorrelation(signals);
			double epsilon = KDistances.of(signals, HERE, 3).sorted(3)[20];
			placed += compare(signals, brute, Dbscan.cluster(signals, epsilon, 4, HERE));
			placed += compare(signals, brute, byChance(seed, 45, 4));
			compare(signals, brute, byChance(seed, 45, 1));
			components += signals.components().count();
		}
		assertTrue(placed > 1000, placed + " placed");
		assertTrue(components > 80, components + " components");
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void equalsTheBruteFormOnASimulatedCampus(Distance kind) {
		for (CampusSize size : List.of(CampusSize.of(2, 2, 60), CampusSize.of(3, 1, 45).apart())) {
			Signals signals = Signals.of(RandomMap.of(6, size, 240, HERE), Representation.positive(), kind);
			double epsilon = KDistances.of(signals, HERE, 3).sorted(3)[120];
			Clustering clustering = Dbscan.cluster(signals, epsilon, 3, HERE);
			assertTrue(compare(signals, new DenseCorrelation(signals), clustering) > 20);
		}
	}

	/** Components so large that most of those out of earshot can be passed over. */
	@Test
	void equalsTheBruteFormWherePartsAreOutOfEarshot() {
		int components = 0;
		for (long seed = 1; seed <= 6; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 500));
			components += signals.components().count();
			int[] label = Dbscan.cluster(signals, KDistances.of(signals, HERE, 3).sorted(3)[300], 4, HERE).labels();
			for (int s = 0; s < label.length; s += 9) {
				label[s] = Clustering.NOISE;
			}
			assertTrue(compare(signals, new DenseCorrelation(signals), new Clustering(label, null)) > 50);
		}
		assertTrue(components > 60, components + " components");
	}

	private static Clustering byChance(long seed, int samples, int clusters) {
		SplittableRandom random = new SplittableRandom(seed);
		return new Clustering(random.ints(samples, -2, clusters).map(l -> Math.max(-1, l)).toArray(), null);
	}

	/** @return how many were given a cluster */
	private static int compare(Signals signals, DenseCorrelation brute, Clustering clustering) {
		List<NoisePlacement> placements = NoiseCorrelation.place(signals, clustering, HERE);
		assertEquals(clustering.noise(), placements.size());
		int placed = 0;
		int last = -1;
		for (NoisePlacement p : placements) {
			assertTrue(p.sample() > last && clustering.isNoise(p.sample()));
			last = p.sample();
			compareCorrelation(p, brute, clustering);
			compareNearest(p, brute, clustering, signals.representation().equals(Representation.positive()));
			placed += p.cluster() == Clustering.NOISE ? 0 : 1;
		}
		return placed;
	}

	private static void compareCorrelation(NoisePlacement p, DenseCorrelation brute, Clustering clustering) {
		double[] best = brute.bestByCluster(p.sample(), clustering);
		double[] ranked = Arrays.stream(best).filter(r -> r > Double.NEGATIVE_INFINITY).sorted().toArray();
		if (ranked.length == 0) {
			assertEquals(Clustering.NOISE, p.cluster());
			assertEquals(-1, p.carrier());
			assertEquals(Double.NaN, p.strength());
			return;
		}
		assertEquals(ranked[ranked.length - 1], p.strength(), TOLERANCE);
		assertEquals(best[p.cluster()], p.strength(), TOLERANCE);
		assertEquals(p.cluster(), clustering.label(p.carrier()));
		assertEquals(p.strength(), brute.r(p.sample(), p.carrier()), TOLERANCE);
		if (ranked.length == 1) {
			assertEquals(Clustering.NOISE, p.runnerUp());
			assertEquals(Double.NaN, p.margin());
			return;
		}
		assertEquals(ranked[ranked.length - 2], p.runnerUpR(), TOLERANCE);
		assertEquals(best[p.runnerUp()], p.runnerUpR(), TOLERANCE);
		assertNotEquals(p.cluster(), p.runnerUp());
		assertEquals(ranked[ranked.length - 1] - ranked[ranked.length - 2], p.margin(), 2 * TOLERANCE);
	}

	private static void compareNearest(NoisePlacement p, DenseCorrelation brute, Clustering clustering, boolean exact) {
		int nearest = brute.nearestLabelled(p.sample(), clustering);
		if (nearest < 0) {
			assertEquals(-1, p.nearest());
			assertEquals(Clustering.NOISE, p.nearestCluster());
			return;
		}
		assertEquals(brute.distance(p.sample(), nearest), p.nearestDistance(), exact ? 0 : TOLERANCE);
		assertEquals(brute.distance(p.sample(), p.nearest()), p.nearestDistance(), exact ? 0 : TOLERANCE);
		assertEquals(clustering.label(p.nearest()), p.nearestCluster());
		assertEquals(p.cluster() == clustering.label(p.nearest()), p.nearestAgrees());
		if (exact) {
			assertEquals(nearest, p.nearest());
		}
	}

	@ParameterizedTest
	@MethodSource("all")
	void takesTheFirstOfIdenticalSamples(String representation, Distance kind) {
		RadioMap map = ScatteredMap.of(12, 30);
		int[] thrice = IntStream.range(0, 90).map(i -> i % 30).toArray();
		Signals signals = Signals.of(map.view(thrice), Representation.named(representation), kind);
		int[] label = new int[90]; // of every three: noise, then cluster 1, then cluster 0
		Arrays.setAll(label, s -> s < 30 ? Clustering.NOISE : s < 60 ? 1 : 0);
		for (NoisePlacement p : NoiseCorrelation.place(signals, new Clustering(label, null), HERE)) {
			if (map.heard(p.sample()) > 0) {
				assertEquals(1, p.strength(), 1e-12);
				assertEquals(1, p.cluster());
				assertEquals(0, p.runnerUp());
				assertEquals(0, p.margin(), 0);
				assertEquals(first(map, p.sample()) + 30, p.carrier());
				assertEquals(first(map, p.sample()) + 30, p.nearest());
				assertEquals(0, p.nearestDistance(), 0);
			}
		}
	}

	/** The first sample of a map with the fingerprint of {@code sample}. */
	private static int first(RadioMap map, int sample) {
		return IntStream.range(0, map.size()).filter(s -> s == sample || map.heard(s) == map.heard(sample)
				&& IntStream.range(map.firstReading(s), map.endReading(s))
						.allMatch(k -> map.rssiDbm(sample, map.accessPoint(k), 1) == map.rssiDbm(k)))
				.findFirst().orElseThrow();
	}

	@ParameterizedTest
	@MethodSource("all")
	void takesAnUndefinedCorrelationForNoMatch(String representation, Distance kind) {
		for (int level : new int[] { -50, 1 }) { // all alike: every row of the matrix is constant
			RadioMapBuilder b = new RadioMapBuilder();
			for (int s = 0; s < 4; s++) {
				b.sample("Tide House", 0, 0, 0);
				if (level <= 0) {
					b.reading("a", level).reading("b", level - 7);
				}
			}
			Signals signals = Signals.of(b.build(), Representation.named(representation), kind);
			NoisePlacement p = NoiseCorrelation.place(signals, new Clustering(new int[] { 0, -1, 0, 1 }, null), HERE)
					.get(0);
			assertEquals(new NoisePlacement(1, Clustering.NOISE, Double.NaN, -1, Clustering.NOISE, Double.NaN, 0, 0, 0),
					p);
			assertEquals(false, p.nearestAgrees());
		}
	}

	@Test
	void placesNothingWithoutClustersAndWithoutNoise() {
		Signals signals = Signals.of(ScatteredMap.of(3, 20));
		int[] noise = new int[20];
		Arrays.fill(noise, Clustering.NOISE);
		List<NoisePlacement> unplaced = NoiseCorrelation.place(signals, new Clustering(noise, null), HERE);
		assertEquals(20, unplaced.size());
		for (NoisePlacement p : unplaced) {
			assertEquals(Clustering.NOISE, p.cluster());
			assertEquals(Clustering.NOISE, p.nearestCluster());
			assertEquals(-1, p.nearest());
			assertEquals(Double.NaN, p.strength());
			assertEquals(Double.POSITIVE_INFINITY, p.nearestDistance());
		}
		assertEquals(List.of(), NoiseCorrelation.place(signals, new Clustering(new int[20], null), HERE));
	}

	@Test
	void opposesTheTwoSamplesOfAMapOfTwo() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -50);
		b.sample("Tide House", 0, 0, 0).reading("a", -60);
		NoisePlacement p = NoiseCorrelation
				.place(Signals.of(b.build()), new Clustering(new int[] { 0, -1 }, null), HERE).get(0);
		assertEquals(-1, p.strength(), 1e-15); // rows (0, 10) and (10, 0)
		assertEquals(0, p.cluster());
		assertEquals(10, p.nearestDistance());
	}

	@Test
	void refusesAClusteringOfAnotherMap() {
		Signals signals = Signals.of(ScatteredMap.of(3, 20));
		Clustering other = new Clustering(new int[19], null);
		assertThrows(IllegalArgumentException.class, () -> NoiseCorrelation.place(signals, other, HERE));
	}

	@Test
	void doesNotDependOnTheNumberOfThreads() {
		for (Distance kind : Distance.values()) {
			Signals signals = Signals.of(ScatteredMap.of(21, 200), Representation.exponential(24), kind);
			Clustering clustering = byChance(1, 200, 6);
			List<NoisePlacement> expected = NoiseCorrelation.place(signals, clustering, HERE);
			for (int count = 1; count <= 3; count++) {
				try (Threads threads = new Threads(count)) {
					for (int run = 0; run < 3; run++) {
						assertEquals(expected, NoiseCorrelation.place(signals, clustering, threads.workers()));
					}
				}
			}
		}
	}
}
