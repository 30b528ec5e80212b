package org.cairnfield.core.cluster;

import static org.cairnfield.core.cluster.ClusteringAssert.assertSame;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SweepTest {

	private static final Workers HERE = Workers.inline();
	private static final int[] MIN_PTS = { 1, 2, 3, 5, 8 };

	@ParameterizedTest
	@EnumSource(Distance.class)
	void equalsDbscanCellForCell(Distance kind) {
		for (long seed = 1; seed <= 60; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 60), Representation.positive(), kind);
			double[] all = Arrays.stream(DenseForm.of(signals).matrix()).flatMapToDouble(Arrays::stream).sorted()
					.toArray();
			double[] epsilons = { 0, all[70], all[120], all[120], all[300], all[301] + 0.5, all[900], all[3599] };
			Arrays.sort(epsilons);
			compare(signals, epsilons, Sweep.run(signals, epsilons, MIN_PTS, HERE));
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "normalised", "exponential", "powed" })
	void equalsDbscanCellForCellInEveryRepresentation(String representation) {
		for (Distance kind : Distance.values()) {
			Signals signals = Signals.of(ScatteredMap.of(17, 80), Representation.named(representation), kind);
			double[] curve = KDistances.of(signals, HERE, 4).sorted(4);
			double[] epsilons = { curve[20], curve[40], curve[60], curve[79] };
			compare(signals, epsilons, Sweep.run(signals, epsilons, MIN_PTS, HERE));
		}
	}

	private static void compare(Signals signals, double[] epsilons, List<Sweep.Cell> cells) {
		assertEquals(epsilons.length * MIN_PTS.length, cells.size());
		for (int m = 0; m < MIN_PTS.length; m++) {
			for (int e = 0; e < epsilons.length; e++) {
				Sweep.Cell cell = cells.get(m * epsilons.length + e);
				assertEquals(epsilons[e], cell.epsilon());
				assertEquals(MIN_PTS[m], cell.minPts());
				assertSame(Dbscan.cluster(signals, epsilons[e], MIN_PTS[m], HERE), cell.clustering(),
						"ε " + epsilons[e] + ", minPts " + MIN_PTS[m]);
			}
		}
	}

	/** The border sample at 10 is as near to 6, core from ε 4 on, as to 14, core from ε 5 on: the first decides. */
	@Test
	void keepsTheFirstOfEquallyNearCoresThatBecomeCoreOneAfterTheOther() {
		double[][] line = { { 10 }, { 6 }, { 2 }, { 2 }, { 2 }, { 14 }, { 18 }, { 18 }, { 19 } };
		double[][] mirrored = { { 10 }, { 14 }, { 18 }, { 18 }, { 19 }, { 6 }, { 2 }, { 2 }, { 2 } };
		double[] epsilons = { 4, 5 };
		for (double[][] points : new double[][][] { line, mirrored }) {
			PointSet set = new DensePoints(points, Distance.CITY_BLOCK);
			List<Sweep.Cell> cells = Sweep.run(set, epsilons, new int[] { 5 }, HERE);
			assertEquals(1, cells.get(0).clustering().clusters());
			Clustering wider = cells.get(1).clustering();
			assertEquals(2, wider.clusters());
			assertEquals(Role.BORDER, wider.role(0));
			assertEquals(wider.label(1), wider.label(0));
			assertSame(Dbscan.cluster(set, 5, 5, HERE), wider, "ε 5");
		}
	}

	@Test
	void takesTheFirstOfEquallyNearCoresInOrOutOfEarshot() {
		Signals signals = DbscanTest.borderBetweenEarshots();
		assertSame(Dbscan.cluster(signals, 4, 6, HERE),
				Sweep.run(signals, new double[] { 4 }, new int[] { 6 }, HERE).get(0).clustering(), "ε 4");
	}

	@Test
	void usesKDistancesAtHand() {
		Signals signals = Signals.of(ScatteredMap.of(4, 60));
		KDistances atHand = KDistances.of(signals, HERE, 0, 1, 2, 4, 7, 9);
		double[] epsilons = { 10, 20, 40 };
		compare(signals, epsilons, Sweep.run(PointSet.of(signals), epsilons, MIN_PTS, atHand, HERE));
		KDistances others = KDistances.of(signals, HERE, 3);
		assertThrows(IllegalArgumentException.class,
				() -> Sweep.run(PointSet.of(signals), epsilons, MIN_PTS, others, HERE));
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3 })
	void doesNotDependOnTheNumberOfThreads(int count) {
		Signals signals = Signals.of(RandomMap.of(4, CampusSize.of(3, 2, 60), 600, HERE));
		double[] curve = KDistances.of(signals, HERE, 4).sorted(4);
		double[] epsilons = { curve[200], curve[300], curve[450] };
		List<Sweep.Cell> expected = Sweep.run(signals, epsilons, MIN_PTS, HERE);
		try (Threads threads = new Threads(count)) {
			for (int run = 0; run < 4; run++) {
				List<Sweep.Cell> found = Sweep.run(signals, epsilons, MIN_PTS, threads.workers());
				for (int i = 0; i < expected.size(); i++) {
					assertSame(expected.get(i).clustering(), found.get(i).clustering(), "cell " + i);
				}
			}
		}
		assertTrue(expected.get(6).clustering().clusters() > 3);
	}

	@Test
	void refusesEpsilonsThatDoNotAscendAndMinPtsBelowOne() {
		Signals signals = Signals.of(ScatteredMap.of(4, 20));
		int[] three = { 3 };
		assertThrows(IllegalArgumentException.class, () -> Sweep.run(signals, new double[] { 5, 4 }, three, HERE));
		assertThrows(IllegalArgumentException.class, () -> Sweep.run(signals, new double[] { -1, 4 }, three, HERE));
		assertThrows(IllegalArgumentException.class,
				() -> Sweep.run(signals, new double[] { Double.NaN }, three, HERE));
		assertThrows(IllegalArgumentException.class, () -> Sweep.run(signals, new double[0], three, HERE));
		assertThrows(IllegalArgumentException.class, () -> Sweep.run(signals, new double[] { 5 }, new int[0], HERE));
		assertThrows(IllegalArgumentException.class, () -> Sweep.run(signals, new double[] { 5 }, new int[1], HERE));
	}

	@Test
	void takesAMapWithoutSamples() {
		Signals nothing = Signals.of(new RadioMapBuilder().build());
		assertEquals(0, Sweep.run(nothing, new double[] { 1 }, MIN_PTS, HERE).get(0).clustering().clusters());
	}
}
