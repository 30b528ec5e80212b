package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.cairnfield.core.choose.SplitChoice.Choice;
import org.cairnfield.core.choose.SplitChoice.Tried;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SplitChoiceTest {

	private static final Workers HERE = Workers.inline();
	private static final SimulatedSite SITE = new SimulatedSite(3);
	private static final Choice CHOICE = SplitChoice.choose(SITE.signals, 1, HERE);

	@Test
	void triesSeveralEpsilonsForSeveralMinPts() {
		assertTrue(CHOICE.tried().size() >= 12, CHOICE.tried().size() + " tried");
		assertTrue(CHOICE.tried().stream().map(Tried::minPts).distinct().count() >= 3);
		assertTrue(CHOICE.tried().stream().map(Tried::epsilon).distinct().count() >= 12);
		for (Tried t : CHOICE.tried()) {
			assertTrue(t.clusters() > 0 && t.noiseShare() >= 0 && t.noiseShare() < 1, t.toString());
			assertTrue(t.meanErrorMetres() > 0 && t.comparisonShare() > 0, t.toString());
		}
	}

	@Test
	void takesTheSmallestErrorWithinAFifthOfPlain() {
		List<Tried> within = CHOICE.tried().stream().filter(t -> t.comparisonShare() <= 0.2).toList();
		Tried best = within.stream().min(Comparator.comparing(Tried::meanErrorMetres)).orElseThrow();
		assertEquals(best.minPts(), CHOICE.minPts());
		double[] curve = KDistances.of(SITE.signals, HERE, best.minPts()).sorted(best.minPts());
		assertEquals(curve[(int) (best.curveShare() * curve.length)], CHOICE.epsilon());
	}

	@Test
	void epsilonStandsOnTheKDistanceCurve() {
		double[][] matrix = DenseForm.of(SITE.signals).matrix();
		double[] fifth = Arrays.stream(matrix).mapToDouble(row -> Arrays.stream(row).sorted().toArray()[5]).sorted()
				.toArray();
		assertEquals(fifth[150], SplitChoice.epsilonAt(SITE.signals, 5, 0.3, HERE));
		assertEquals(fifth[499], SplitChoice.epsilonAt(SITE.signals, 5, 1, HERE));
	}

	@Test
	void splitsTheWholeMapWithinItsBudgetOnAFreshWalk() {
		Clustering found = Dbscan.cluster(SITE.signals, CHOICE.epsilon(), CHOICE.minPts(), HERE);
		Clustering placed = found.relabelled(NearestLabelled.labels(SITE.signals, List.of(found), HERE).get(0));
		SplitMap split = SplitMap.of(SITE.signals, placed, Centroids.Kind.MEAN, false);
		Estimates e = SITE.estimate(new SplitMatcher(split, 1, 1, false, Voting.NEAREST));
		double share = e.meanComparisons() / SimulatedSite.SAMPLES;
		assertTrue(share <= 1.2 * SplitChoice.BUDGET_SHARE, share + " of plain"); // chosen on a part of the map
	}

	@Test
	void isTheSameForTheSameSeedAndAnyNumberOfThreads() {
		try (Threads threads = new Threads(3)) {
			assertEquals(CHOICE, SplitChoice.choose(SITE.signals, 1, threads.workers()));
		}
		assertTrue(!CHOICE.tried().equals(SplitChoice.choose(SITE.signals, 2, HERE).tried()));
	}

	@Test
	void doesNotSeeOtherSamplesOfTheMapItsViewIsPartOf() {
		RadioMap view = SITE.withinMapAndWalk();
		assertEquals(SimulatedSite.SAMPLES, view.size());
		assertEquals(CHOICE, SplitChoice.choose(Signals.of(view), 1, HERE));
	}

	@Test
	void startsAboveZeroWhereScansAreRepeated() {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int s = 0; s < 40; s++) {
			b.sample("Tide House", 0, s / 4, 0).reading("a", s < 32 ? -40 - s / 8 * 10 : -90 - s % 4);
		}
		assertTrue(SplitChoice.epsilonAt(Signals.of(b.build()), 3, 0.3, HERE) > 0);
	}

	@Test
	void answersForASingleSampleAndForNone() {
		RadioMap one = new RadioMapBuilder().sample("Tide House", 0, 5, 5).reading("a", -50).build();
		assertEquals(0, SplitChoice.choose(Signals.of(one), 1, HERE).epsilon());
		Choice none = SplitChoice.choose(Signals.of(new RadioMapBuilder().build()), 1, HERE);
		assertEquals(List.of(), none.tried());
		assertEquals(0, none.epsilon());
	}
}
