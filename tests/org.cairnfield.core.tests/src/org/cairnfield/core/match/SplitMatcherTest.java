package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.cluster.OverlappingZones;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SplitMatcherTest {

	private static final Workers HERE = Workers.inline();
	private static final int SAMPLES = 120;

	/** A map split at random into cells and noise, with queries of the same places from another file. */
	private record Case(Signals signals, Clustering clustering, RadioMap asked) {

		static Case of(long seed, String representation, Distance kind) {
			RadioMap whole = ScatteredMap.of(seed, SAMPLES + 40);
			RadioMap map = whole.where(s -> s < SAMPLES);
			RadioMap asked = ScatteredMap.rebuilt(whole, IntStream.range(SAMPLES - 20, SAMPLES + 40).toArray());
			int[] label = new SplittableRandom(seed).ints(SAMPLES, -1, 12).toArray();
			return new Case(Signals.of(map, Representation.named(representation), kind), new Clustering(label, null),
					asked);
		}

		SplitMap split(boolean keepPool) {
			return SplitMap.of(signals, clustering, Centroids.Kind.MEAN, keepPool);
		}

		Estimates estimate(Matcher matcher) {
			return Estimates.of(matcher, signals.align(asked), HERE);
		}
	}

	@ParameterizedTest
	@CsvSource({ "positive, CITY_BLOCK", "positive, EUCLIDEAN", "exponential, CITY_BLOCK", "exponential, EUCLIDEAN" })
	void equalsPlainMatchingWhereAllCellsAreProbed(String representation, Distance kind) {
		for (long seed = 1; seed <= 15; seed++) {
			Case c = Case.of(seed, representation, kind);
			SplitMap split = c.split(true);
			SplitMap twoLevel = split.inTwoLevels(seed, HERE);
			for (Voting voting : new Voting[] { Voting.NEAREST, Voting.THREE_WEIGHTED }) {
				Estimates plain = c.estimate(new PlainMatcher(new Neighbours(c.signals), voting));
				for (boolean relative : new boolean[] { false, true }) {
					Estimates one = c.estimate(new SplitMatcher(split, 1, split.cells(), relative, voting));
					Estimates two = c.estimate(
							new SplitMatcher(twoLevel, twoLevel.groups(), split.cells(), relative, voting));
					EstimatesTest.assertSame(c.signals.map(), plain, c.signals.map(), one);
					EstimatesTest.assertSame(c.signals.map(), plain, c.signals.map(), two);
					assertEquals(split.cells() + SAMPLES, one.meanComparisons());
					assertEquals(twoLevel.groups() + split.cells() + SAMPLES, two.meanComparisons());
				}
			}
		}
	}

	/** Against a search that ranks all cells by dense distances and then all their members. */
	@ParameterizedTest
	@CsvSource({ "CITY_BLOCK, false", "CITY_BLOCK, true", "EUCLIDEAN, false", "EUCLIDEAN, true" })
	void searchesTheNearestCellsAndNothingElse(Distance kind, boolean relative) {
		int compared = 0;
		for (long seed = 1; seed <= 15; seed++) {
			Case c = Case.of(seed, "positive", kind);
			for (int probes = 1; probes <= 3; probes++) {
				for (boolean pool : new boolean[] { false, true }) {
					compared += compareWithDense(c, probes, pool, relative);
				}
			}
		}
		assertTrue(compared > 15 * 6 * 60 * 0.7, compared + " compared");
	}

	private static int compareWithDense(Case c, int probes, boolean pool, boolean relative) {
		SplitMap split = c.split(pool);
		Centroids centroids = Centroids.of(c.signals, c.clustering.members(), Centroids.Kind.MEAN);
		Matcher.Session session = new SplitMatcher(split, 1, probes, relative, Voting.THREE_WEIGHTED).session();
		Neighbours.Search plain = new Neighbours(c.signals).search();
		SignalRows queries = c.signals.align(c.asked);
		int compared = 0;
		for (int q = 0; q < queries.size(); q++) {
			double[] coarse = new double[centroids.size()];
			centroids.distances(queries, q, coarse);
			for (int i = 0; i < coarse.length && relative; i++) {
				coarse[i] /= Math.max(1e-300, queries.magnitude(q) + centroids.magnitude(i));
			}
			Integer[] cells = IntStream.range(0, coarse.length).boxed().toArray(Integer[]::new);
			Arrays.sort(cells, (a, b) -> Double.compare(coarse[a], coarse[b]));
			if (coarse[cells[probes]] - coarse[cells[probes - 1]] < 1e-9) {
				continue; // too near to call
			}
			boolean[] entered = new boolean[cells.length];
			int members = 0;
			for (int i = 0; i < probes; i++) {
				entered[cells[i]] = true;
				members += c.clustering.sizes()[cells[i]];
			}
			Nearest all = plain.of(queries, q, SAMPLES);
			int[] expected = IntStream.range(0, SAMPLES).map(all::sample)
					.filter(s -> c.clustering.isNoise(s) ? pool : entered[c.clustering.label(s)]).limit(3).toArray();
			Nearest found = session.nearest(queries, q);
			assertArrayEquals(expected, IntStream.range(0, found.size()).map(found::sample).toArray());
			int inPool = pool ? c.clustering.noise() : 0;
			assertEquals(cells.length + members + inPool, session.comparisons());
			compared++;
		}
		return compared;
	}

	/** One session many queries: nothing of a query may stay behind. */
	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void forgetsTheQueryBefore(boolean twoLevels) {
		for (long seed = 1; seed <= 10; seed++) {
			Case c = Case.of(seed, "positive", Distance.CITY_BLOCK);
			SplitMap split = twoLevels ? c.split(false).inTwoLevels(seed, HERE) : c.split(false);
			Matcher matcher = new SplitMatcher(split, 1, 2, true, Voting.THREE_WEIGHTED);
			SignalRows queries = c.signals.align(c.asked);
			Matcher.Session used = matcher.session();
			for (int q = queries.size() - 1; q >= 0; q--) {
				Nearest expected = matcher.session().nearest(queries, q);
				Nearest found = used.nearest(queries, q);
				assertEquals(expected.size(), found.size());
				for (int i = 0; i < expected.size(); i++) {
					assertEquals(expected.sample(i), found.sample(i));
					assertEquals(expected.distance(i), found.distance(i));
				}
			}
		}
	}

	@Test
	void leavesNoiseOutUnlessThereIsAPool() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -50);
		b.sample("Tide House", 0, 1, 0).reading("a", -70);
		Signals signals = Signals.of(b.build());
		Clustering clustering = new Clustering(new int[] { Clustering.NOISE, 0 }, null);
		RadioMap asked = new RadioMapBuilder().sample("?", 0, 0, 0).reading("a", -50).build();
		for (boolean pool : new boolean[] { false, true }) {
			SplitMap split = SplitMap.of(signals, clustering, Centroids.Kind.MEAN, pool);
			assertEquals(pool ? 2 : 1, split.samples());
			Estimates found = Estimates.of(new SplitMatcher(split, 1, 1, false, Voting.NEAREST),
					signals.align(asked), HERE);
			assertEquals(pool ? 0 : 1, found.x(0));
			assertEquals(pool ? 3 : 2, found.comparisons(0));
		}
	}

	/**
	 * A faint query of a loud place: its positive values are 5 at a, the places have 60 at a and 10 at b. By
	 * distance the quiet stranger is nearer (15 against 55), relative to the magnitudes it is not (1 against 0.85).
	 */
	@Test
	void relativeDistancesDoNotSendAFaintQueryToAQuietStranger() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 1, 0).reading("a", -40);
		b.sample("Lantern Store", 0, 2, 0).reading("b", -90);
		b.sample("Lantern Store", 0, 3, 0).reading("lowest", -99);
		Signals signals = Signals.of(b.build());
		SplitMap split = SplitMap.of(signals, new Clustering(new int[] { 0, 1, -1 }, null), Centroids.Kind.MEAN, false);
		RadioMap asked = new RadioMapBuilder().sample("?", 0, 0, 0).reading("a", -95).build();
		SignalRows queries = signals.align(asked);
		assertEquals(2, Estimates.of(new SplitMatcher(split, 1, 1, false, Voting.NEAREST), queries, HERE).x(0));
		assertEquals(1, Estimates.of(new SplitMatcher(split, 1, 1, true, Voting.NEAREST), queries, HERE).x(0));
	}

	@Test
	void relativeDistancesTakeAQueryThatHeardNothing() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 1, 0);
		b.sample("Lantern Store", 0, 2, 0).reading("b", -90);
		Signals signals = Signals.of(b.build());
		SplitMap split = SplitMap.of(signals, new Clustering(new int[] { 0, 1 }, null), Centroids.Kind.MEAN, false);
		RadioMap asked = new RadioMapBuilder().sample("?", 0, 0, 0).build();
		assertEquals(1,
				Estimates.of(new SplitMatcher(split, 1, 1, true, Voting.NEAREST), signals.align(asked), HERE).x(0));
	}

	private static OverlappingZones zones(Signals signals, double tau, long seed) {
		KMeans.Points points = KMeans.points(signals, IntStream.range(0, signals.size()).toArray());
		return OverlappingZones.of(points, KMeans.cluster(points, 8, KMeans.Start.SPREAD, seed, HERE), tau, HERE);
	}

	/** τ → ∞. */
	@ParameterizedTest
	@CsvSource({ "positive, CITY_BLOCK", "positive, EUCLIDEAN", "exponential, CITY_BLOCK" })
	void equalsPlainMatchingWhereEveryZoneHasAllSamples(String representation, Distance kind) {
		for (long seed = 1; seed <= 15; seed++) {
			Case c = Case.of(seed, representation, kind);
			OverlappingZones zones = zones(c.signals, Double.POSITIVE_INFINITY, seed);
			Estimates plain = c.estimate(new PlainMatcher(new Neighbours(c.signals), Voting.THREE_WEIGHTED));
			Estimates found = c
					.estimate(new SplitMatcher(SplitMap.of(c.signals, zones), 1, 1, false, Voting.THREE_WEIGHTED));
			EstimatesTest.assertSame(c.signals.map(), plain, c.signals.map(), found);
			assertEquals(zones.clustering().clusters() + SAMPLES, found.meanComparisons());
		}
	}

	@Test
	void searchesTheZoneOfTheNearestClusterOnly() {
		for (long seed = 1; seed <= 15; seed++) {
			Case c = Case.of(seed, "positive", Distance.CITY_BLOCK);
			OverlappingZones zones = zones(c.signals, 0.4, seed);
			Centroids centres = Centroids.of(c.signals, zones.clustering().members(), Centroids.Kind.MEAN);
			SplitMap split = SplitMap.of(c.signals, zones);
			Matcher.Session session = new SplitMatcher(split, 1, 1, false, Voting.THREE_WEIGHTED).session();
			Neighbours.Search plain = new Neighbours(c.signals).search();
			SignalRows queries = c.signals.align(c.asked);
			for (int q = 0; q < queries.size(); q++) {
				double[] d = new double[centres.size()];
				centres.distances(queries, q, d);
				int nearest = IntStream.range(0, d.length).reduce(0, (a, b) -> d[b] < d[a] ? b : a);
				int[] zone = zones.members()[nearest];
				Nearest all = plain.of(queries, q, SAMPLES);
				int[] expected = IntStream.range(0, SAMPLES).map(all::sample)
						.filter(s -> Arrays.binarySearch(zone, s) >= 0).limit(3).toArray();
				Nearest found = session.nearest(queries, q);
				assertArrayEquals(expected, IntStream.range(0, found.size()).map(found::sample).toArray());
				assertEquals(centres.size() + zone.length, session.comparisons());
			}
		}
	}

	@Test
	void refusesSeveralOfOverlappingZones() {
		Signals signals = Case.of(1, "positive", Distance.CITY_BLOCK).signals;
		SplitMap split = SplitMap.of(signals, zones(signals, 0.5, 1));
		assertThrows(IllegalArgumentException.class, () -> new SplitMatcher(split, 1, 2, false, Voting.NEAREST));
	}

	@Test
	void refusesToProbeNothing() {
		SplitMap split = Case.of(1, "positive", Distance.CITY_BLOCK).split(false);
		assertThrows(IllegalArgumentException.class, () -> new SplitMatcher(split, 0, 1, true, Voting.NEAREST));
		assertThrows(IllegalArgumentException.class, () -> new SplitMatcher(split, 1, 0, true, Voting.NEAREST));
	}
}
