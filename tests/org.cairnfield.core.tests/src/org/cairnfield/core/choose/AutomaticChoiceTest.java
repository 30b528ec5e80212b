package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.AutomaticChoice.Choice;
import org.cairnfield.core.choose.AutomaticChoice.Tried;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AutomaticChoiceTest {

	private static final Workers HERE = Workers.inline();
	private static final SimulatedSite SITE = new SimulatedSite(3);
	private static final Choice CHOICE = AutomaticChoice.choose(SITE.signals, 1, HERE);

	@Test
	void listsAllThatItTriedBestFirst() {
		List<Tried> tried = CHOICE.tried();
		assertEquals(2, tried.stream().map(Tried::epsilon).distinct().count());
		assertEquals(2, tried.stream().map(t -> t.search().cut()).distinct().count());
		assertEquals(2, tried.stream().map(t -> t.search().twoLevels()).distinct().count());
		assertTrue(tried.stream().map(t -> t.search().cellProbes()).distinct().count() > 2);
		assertTrue(tried.stream().map(t -> t.search().voting().k()).distinct().count() > 1);
		assertEquals(tried.size(), tried.stream().map(t -> t.epsilon() + t.search().code()).distinct().count());
		for (Tried t : tried) {
			assertTrue(t.meanErrorMetres() > 0 && t.comparisonShare() > 0 && t.comparisonShare() < 2, t.toString());
		}
		assertEquals(tried.get(0), CHOICE.best());
	}

	@Test
	void keepsToAnEpsilonThatWasGiven() {
		Choice choice = AutomaticChoice.searchFor(SITE.signals, CHOICE.best().epsilon(), 5, 1, TimeLimit.NEVER, HERE);
		assertTrue(choice.tried().stream().allMatch(t -> t.epsilon() == CHOICE.best().epsilon() && t.minPts() == 5));
		assertTrue(choice.tried().stream().map(Tried::search).distinct().count() == choice.tried().size());
	}

	/** With a tenth of the budget to spare, errors within 3 % count as equal, and then the thorough search wins. */
	@Test
	void takesTheMostThoroughOfTheGoodSearchesWithinTheBudget() {
		double allowed = 0.9 * Budget.share(SimulatedSite.SAMPLES);
		boolean notTheLeast = false;
		boolean notTheMostThorough = false;
		for (long site = 3; site <= 8; site++) {
			List<Tried> tried = AutomaticChoice.choose(new SimulatedSite(site).signals, 1, HERE).tried();
			List<Tried> within = tried.stream().filter(t -> t.comparisonShare() <= allowed).toList();
			assertTrue(within.size() > 3 && within.size() < tried.size(), within.size() + " within the budget");
			assertEquals(within, tried.subList(0, within.size()));
			double least = within.stream().mapToDouble(Tried::meanErrorMetres).min().orElseThrow();
			double thorough = within.stream().filter(t -> t.meanErrorMetres() <= 1.03 * least)
					.mapToDouble(Tried::sampleShare).max().orElseThrow();
			assertTrue(tried.get(0).meanErrorMetres() <= 1.03 * least);
			assertEquals(thorough, tried.get(0).sampleShare());
			notTheLeast |= tried.get(0).meanErrorMetres() > least;
			notTheMostThorough |= within.stream().anyMatch(t -> t.sampleShare() > thorough);
		}
		assertTrue(notTheLeast && notTheMostThorough, "neither half of the rule made a difference here");
	}

	@ParameterizedTest
	@ValueSource(longs = { 3, 4 })
	void positionsAFreshWalkAsWellAsPlainMatchingForAFractionOfTheCost(long seed) {
		SimulatedSite site = seed == 3 ? SITE : new SimulatedSite(seed);
		Choice choice = seed == 3 ? CHOICE : AutomaticChoice.choose(site.signals, 1, HERE);
		Estimates chosen = site.estimate(matcher(site.signals, choice));
		Estimates plain = site.estimate(new PlainMatcher(new Neighbours(site.signals), Voting.NEAREST));
		double ratio = site.meanErrorMetres(chosen) / site.meanErrorMetres(plain);
		assertTrue(ratio <= 1.1, "error " + ratio + " of plain");
		double share = chosen.meanComparisons() / SimulatedSite.SAMPLES;
		assertTrue(share <= Budget.share(SimulatedSite.SAMPLES), share + " of plain");
	}

	@Test
	void isTheSameForTheSameSeedAndAnyNumberOfThreads() {
		try (Threads threads = new Threads(2)) {
			assertSame(CHOICE, AutomaticChoice.choose(SITE.signals, 1, threads.workers()));
		}
	}

	@Test
	void doesNotSeeOtherSamplesOfTheMapItsViewIsPartOf() {
		assertSame(CHOICE, AutomaticChoice.choose(Signals.of(SITE.withinMapAndWalk()), 1, HERE));
	}

	private static void assertSame(Choice expected, Choice found) {
		assertEquals(expected.tried(), found.tried());
		assertEquals(expected.questions(), found.questions());
	}

	/** As a map is searched where every noise sample was given to the cluster it correlates with. */
	private static Matcher matcher(Signals signals, Choice choice) {
		Tried best = choice.best();
		Clustering found = Dbscan.cluster(signals, best.epsilon(), best.minPts(), HERE);
		int[] labels = found.labels();
		NoiseCorrelation.place(signals, found, HERE).forEach(p -> labels[p.sample()] = p.cluster());
		Search search = best.search();
		return search.matcher(search.map(signals, search.cells(signals, found.relabelled(labels), 1, HERE), 1, HERE));
	}

	@Test
	void asksOnlyAtPlacesTheHeldOutMapDoesNotHold() {
		RadioMapBuilder b = new RadioMapBuilder(); // every place of the site twice
		for (int i = 0; i < 2 * SimulatedSite.SAMPLES; i++) {
			int s = i % SimulatedSite.SAMPLES;
			b.sample("Tide House", SITE.map.floor(s), SITE.map.x(s), SITE.map.y(s)).reading("a", -40 - i % 50);
		}
		RadioMap map = b.build();
		Set<String> seen = new HashSet<>();
		for (int i = 0; i < 4; i++) {
			RadioMap kept = HeldOut.of(Signals.of(map), PositionBlocks.of(map), i, 1).signals.map();
			boolean[] isKept = new boolean[map.size()];
			IntStream.range(0, kept.size()).forEach(s -> isKept[kept.row(s)] = true);
			for (int s = 0; s < SimulatedSite.SAMPLES; s++) {
				assertEquals(isKept[s], isKept[s + SimulatedSite.SAMPLES]);
			}
			assertEquals(0.8, kept.size() / (double) map.size(), 0.03);
			seen.add(Arrays.toString(isKept));
		}
		assertEquals(4, seen.size()); // different blocks each time
	}

	@Test
	void answersForAHandfulOfSamples() {
		for (int n : new int[] { 1, 2, 5 }) {
			RadioMapBuilder b = new RadioMapBuilder();
			for (int s = 0; s < n; s++) {
				b.sample("Tide House", 0, s, 0).reading("a", -50 - s);
			}
			Signals signals = Signals.of(b.build());
			Choice choice = AutomaticChoice.choose(signals, 1, HERE);
			assertFalse(choice.tried().isEmpty());
			assertTrue(choice.best().search().cellProbes() >= 1);
		}
	}
}
