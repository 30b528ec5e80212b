package org.cairnfield.core.cluster;

import static org.cairnfield.core.cluster.ClusteringAssert.assertSame;
import static org.cairnfield.core.cluster.ClusteringAssert.assertSamePartition;
import static org.cairnfield.core.cluster.ClusteringAssert.coreLabels;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.ml.clustering.Cluster;
import org.apache.commons.math3.ml.clustering.Clusterable;
import org.apache.commons.math3.ml.clustering.DBSCANClusterer;
import org.apache.commons.math3.ml.distance.DistanceMeasure;
import org.apache.commons.math3.ml.distance.EuclideanDistance;
import org.apache.commons.math3.ml.distance.ManhattanDistance;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold on any map, by the definitions of Ester et al., KDD-96, and against two other implementations. */
class DbscanOnRandomMapsTest {

	private static final int SAMPLES = 60;
	private static final Workers HERE = Workers.inline();

	/** One map, one ε on a distance that occurs (so that the closed ball matters), one minPts. */
	private record Case(Signals signals, double[][] distance, double epsilon, int minPts) {

		static Case of(long seed, Distance kind) {
			Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.positive(), kind);
			double[][] distance = DenseForm.of(signals).matrix();
			double[] all = Arrays.stream(distance).flatMapToDouble(Arrays::stream).sorted().toArray();
			return new Case(signals, distance, all[(int) (all.length * (0.02 + seed % 7 * 0.02))],
					1 + (int) (seed % 6));
		}

		Clustering cluster() {
			return Dbscan.cluster(signals, epsilon, minPts, HERE);
		}
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void keepsTheDefinitions(Distance kind) {
		int border = 0;
		for (long seed = 1; seed <= 100; seed++) {
			Case c = Case.of(seed, kind);
			Clustering found = c.cluster();
			boolean[] core = NaiveDbscan.core(c.distance, c.epsilon, c.minPts);
			for (int s = 0; s < SAMPLES; s++) {
				assertEquals(core[s], found.role(s) == Role.CORE, "seed " + seed + ", sample " + s);
				int sample = s;
				boolean inReach = IntStream.range(0, SAMPLES)
						.anyMatch(o -> core[o] && c.distance[sample][o] <= c.epsilon);
				assertEquals(!inReach, found.isNoise(s));
				assertEquals(!inReach, found.role(s) == Role.NOISE);
				if (inReach) {
					assertTrue(IntStream.range(0, SAMPLES).anyMatch(o -> core[o]
							&& c.distance[sample][o] <= c.epsilon && found.label(o) == found.label(sample)));
				}
				for (int o = 0; o < SAMPLES && core[s]; o++) {
					if (core[o] && c.distance[s][o] <= c.epsilon) {
						assertEquals(found.label(s), found.label(o));
					}
				}
				border += found.role(s) == Role.BORDER ? 1 : 0;
			}
			for (int[] members : found.members()) {
				assertTrue(Arrays.stream(members).anyMatch(s -> core[s]));
			}
		}
		assertTrue(border > 50, border + " border samples in all are too few to mean anything");
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void equalsTheNaiveFormBorderRuleIncluded(Distance kind) {
		for (long seed = 1; seed <= 200; seed++) {
			Case c = Case.of(seed, kind);
			assertSame(NaiveDbscan.cluster(c.distance, c.epsilon, c.minPts), c.cluster(), "seed " + seed);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "normalised", "exponential", "powed" })
	void equalsTheNaiveFormInEveryRepresentation(String representation) {
		for (Distance kind : Distance.values()) {
			for (long seed = 1; seed <= 20; seed++) {
				Signals signals = Signals.of(ScatteredMap.of(seed, SAMPLES), Representation.named(representation),
						kind);
				DenseForm dense = DenseForm.of(signals);
				double epsilon = dense.epsilonAt(0.05 + seed % 5 * 0.02);
				Clustering expected = NaiveDbscan.cluster(dense.matrix(), epsilon, 4);
				Clustering found = Dbscan.cluster(signals, epsilon, 4, HERE);
				// Borders are left to the exact representation: rounding decides between equally near cores.
				assertSamePartition(coreLabels(expected), coreLabels(found), "seed " + seed);
				assertEquals(expected.noise(), found.noise());
			}
		}
	}

	/**
	 * Commons Math does not count the point itself (issue MATH-1367), hence minPts − 1. It gives a border sample to
	 * the cluster found first; here only its membership of a cluster in reach is compared.
	 */
	@ParameterizedTest
	@EnumSource(Distance.class)
	void agreesWithCommonsMathOnCoresAndNoise(Distance kind) {
		int clusters = 0;
		for (long seed = 1; seed <= 250; seed++) {
			Case c = Case.of(seed, kind);
			clusters += compareWithCommonsMath(c, kind, "seed " + seed).clusters();
		}
		assertTrue(clusters > 250, clusters + " clusters in all");
	}

	@Test
	void agreesWithCommonsMathOnASimulatedCampus() {
		for (CampusSize size : List.of(CampusSize.of(2, 2, 40), CampusSize.of(3, 1, 40).apart())) {
			RadioMap map = RandomMap.of(11, size, 300, HERE);
			Signals signals = Signals.of(map);
			double epsilon = KDistances.of(signals, HERE, 4).sorted(4)[150];
			Case c = new Case(signals, DenseForm.of(signals).matrix(), epsilon, 4);
			assertTrue(compareWithCommonsMath(c, Distance.CITY_BLOCK, size.toString()).clusters() > 3);
		}
	}

	private record Point(int index, double[] values) implements Clusterable {
		@Override
		public double[] getPoint() {
			return values;
		}
	}

	private static Clustering compareWithCommonsMath(Case c, Distance kind, String what) {
		Clustering found = c.cluster();
		DistanceMeasure measure = kind == Distance.CITY_BLOCK ? new ManhattanDistance() : new EuclideanDistance();
		List<Point> points = new ArrayList<>();
		for (double[] row : DenseForm.of(c.signals).values()) {
			points.add(new Point(points.size(), row));
		}
		int[] label = new int[points.size()];
		Arrays.fill(label, Clustering.NOISE);
		int next = 0;
		for (Cluster<Point> cluster : new DBSCANClusterer<Point>(c.epsilon, c.minPts - 1, measure).cluster(points)) {
			for (Point p : cluster.getPoints()) {
				label[p.index] = next;
			}
			next++;
		}
		assertEquals(next, found.clusters(), what);
		int[] coreLabel = label.clone();
		for (int s = 0; s < label.length; s++) {
			assertEquals(label[s] == Clustering.NOISE, found.isNoise(s), what + ", sample " + s);
			coreLabel[s] = found.role(s) == Role.CORE ? label[s] : Clustering.NOISE;
		}
		assertSamePartition(coreLabel, coreLabels(found), what);
		return found;
	}

	@Test
	void doesNotDependOnTheOrderOfTheMap() {
		for (long seed = 1; seed <= 60; seed++) {
			Case c = Case.of(seed, Distance.CITY_BLOCK);
			Clustering found = c.cluster();
			int[] order = ScatteredMap.shuffled(SAMPLES, seed);
			RadioMap other = seed % 2 == 0 ? c.signals.map().view(order) : ScatteredMap.rebuilt(c.signals.map(), order);
			Clustering shuffled = Dbscan.cluster(Signals.of(other), c.epsilon, c.minPts, HERE);
			int[] back = new int[SAMPLES];
			for (int i = 0; i < SAMPLES; i++) {
				back[order[i]] = shuffled.label(i);
				assertEquals(found.role(order[i]), shuffled.role(i));
			}
			int[] expected = found.labels();
			for (int s = 0; s < SAMPLES; s++) { // equally near cores may decide otherwise, nothing else may
				if (found.role(s) == Role.BORDER && severalNearestClusters(c, found, s)) {
					back[s] = Clustering.NOISE;
					expected[s] = Clustering.NOISE;
				}
			}
			assertSamePartition(expected, back, "seed " + seed);
		}
	}

	private static boolean severalNearestClusters(Case c, Clustering found, int sample) {
		double nearest = IntStream.range(0, SAMPLES).filter(o -> found.role(o) == Role.CORE)
				.mapToDouble(o -> c.distance[sample][o]).min().orElseThrow();
		return IntStream.range(0, SAMPLES).filter(o -> found.role(o) == Role.CORE && c.distance[sample][o] == nearest)
				.map(found::label).distinct().count() > 1;
	}

	@ParameterizedTest
	@EnumSource(Distance.class)
	void coresGrowWithEpsilonAndShrinkWithMinPts(Distance kind) {
		for (long seed = 1; seed <= 20; seed++) {
			Case c = Case.of(seed, kind);
			for (double more : new double[] { 0, 1, 5, 50 }) {
				for (int stricter = 0; stricter < 4; stricter++) {
					Clustering base = Dbscan.cluster(c.signals, c.epsilon, c.minPts + stricter, HERE);
					Clustering wider = Dbscan.cluster(c.signals, c.epsilon + more, c.minPts + stricter, HERE);
					Clustering harder = Dbscan.cluster(c.signals, c.epsilon, c.minPts + stricter + 1, HERE);
					for (int s = 0; s < SAMPLES; s++) {
						assertTrue(base.role(s) != Role.CORE || wider.role(s) == Role.CORE);
						assertTrue(harder.role(s) != Role.CORE || base.role(s) == Role.CORE);
					}
				}
			}
		}
	}

	@Test
	void numbersClustersByTheirFirstCore() {
		for (long seed = 1; seed <= 50; seed++) {
			int[] core = coreLabels(Case.of(seed, Distance.CITY_BLOCK).cluster());
			assertArrayEquals(ClusteringAssert.numberedByFirst(core), core, "seed " + seed);
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3 })
	void doesNotDependOnTheNumberOfThreads(int count) {
		Signals signals = Signals.of(RandomMap.of(4, CampusSize.of(3, 2, 60), 900, HERE));
		double epsilon = KDistances.of(signals, HERE, 4).sorted(4)[500];
		Clustering expected = Dbscan.cluster(signals, epsilon, 5, HERE);
		assertTrue(expected.clusters() > 5 && expected.noise() > 20);
		try (Threads threads = new Threads(count)) {
			for (int run = 0; run < 5; run++) {
				assertSame(expected, Dbscan.cluster(signals, epsilon, 5, threads.workers()), "run " + run);
			}
		}
	}
}
