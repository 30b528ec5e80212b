package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EstimatesTest {

	private static final Workers HERE = Workers.inline();
	private static final RadioMap WHOLE = ScatteredMap.of(31, 200);
	private static final RadioMap MAP = WHOLE.where(s -> s % 4 != 0);
	private static final RadioMap ASKED = WHOLE.where(s -> s % 4 == 0);

	private static Matcher plain(RadioMap map, Voting voting) {
		return new PlainMatcher(new Neighbours(Signals.of(map)), voting);
	}

	private static Estimates estimate(Matcher matcher, RadioMap asked, Workers workers) {
		return Estimates.of(matcher, matcher.signals().align(asked), workers);
	}

	static void assertSame(RadioMap mapA, Estimates a, RadioMap mapB, Estimates b) {
		assertEquals(a.size(), b.size());
		for (int q = 0; q < a.size(); q++) {
			assertEquals(a.x(q), b.x(q), "x of query " + q);
			assertEquals(a.y(q), b.y(q), "y of query " + q);
			assertEquals(a.floor(q), b.floor(q), "floor of query " + q);
			assertEquals(mapA.sites().get(a.site(q)), mapB.sites().get(b.site(q)), "site of query " + q);
		}
	}

	/** To the last bit, for equally near samples and for the order in which names are first seen. */
	@ParameterizedTest
	@ValueSource(strings = { "positive", "exponential" })
	void doNotDependOnTheOrderOfTheFile(String representation) {
		for (Distance kind : Distance.values()) {
			for (Voting voting : List.of(Voting.NEAREST, Voting.THREE_WEIGHTED, new Voting(4, false))) {
				Signals signals = Signals.of(MAP, Representation.named(representation), kind);
				Estimates expected = Estimates.of(new PlainMatcher(new Neighbours(signals), voting),
						signals.align(ASKED), HERE);
				for (long seed = 1; seed <= 5; seed++) {
					RadioMap other = ScatteredMap.rebuilt(MAP, ScatteredMap.shuffled(MAP.size(), seed));
					Signals shuffled = Signals.of(other, Representation.named(representation), kind);
					if (representation.equals("positive")) {
						assertSame(MAP, expected, other,
								Estimates.of(new PlainMatcher(new Neighbours(shuffled), voting),
										shuffled.align(ASKED), HERE));
					}
					RadioMap view = MAP.view(ScatteredMap.shuffled(MAP.size(), seed));
					Signals viewed = Signals.of(view, Representation.named(representation), kind);
					assertSame(MAP, expected, view, Estimates.of(new PlainMatcher(new Neighbours(viewed), voting),
							viewed.align(ASKED), HERE));
				}
			}
		}
	}

	@Test
	void ofSeveralVotingsEqualThoseOfEachAlone() {
		List<Voting> votings = List.of(new Voting(5, true), Voting.NEAREST, new Voting(3, false));
		Matcher matcher = plain(MAP, new Voting(5, true));
		SignalRows queries = matcher.signals().align(ASKED);
		List<Estimates> together = Estimates.of(matcher, votings, queries, HERE);
		for (int v = 0; v < votings.size(); v++) {
			assertSame(MAP, Estimates.of(plain(MAP, votings.get(v)), queries, HERE), MAP, together.get(v));
		}
	}

	@Test
	void refuseAVotingThatNeedsMoreThanWasFound() {
		Matcher matcher = plain(MAP, Voting.NEAREST);
		SignalRows queries = matcher.signals().align(ASKED);
		List<Voting> votings = List.of(new Voting(2, false));
		assertThrows(IllegalArgumentException.class, () -> Estimates.of(matcher, votings, queries, HERE));
	}

	@Test
	void areUnknownWhereTheMapIsEmpty() {
		RadioMap empty = new RadioMapBuilder().build();
		Estimates found = estimate(plain(empty, Voting.THREE_WEIGHTED), ASKED, HERE);
		assertEquals(ASKED.size(), found.size());
		assertEquals(Double.NaN, found.x(0));
		assertEquals(Double.NaN, found.y(0));
		assertEquals(Estimates.UNKNOWN, found.floor(0));
		assertEquals(Estimates.UNKNOWN, found.site(0));
		assertFalse(found.positions().isKnown(0));
	}

	@Test
	void giveTheirPositions() {
		Estimates found = estimate(plain(MAP, Voting.NEAREST), ASKED, HERE);
		for (int q = 0; q < found.size(); q++) {
			assertEquals(found.x(q), found.positions().x(q));
			assertEquals(found.y(q), found.positions().y(q));
			assertEquals(found.floor(q), found.positions().floor(q));
			assertEquals(found.site(q), found.positions().site(q));
			assertTrue(found.positions().isKnown(q));
		}
	}

	@Test
	void costOneComparisonASampleInPlainMatching() {
		Estimates found = estimate(plain(MAP, Voting.NEAREST), ASKED, HERE);
		assertTrue(IntStream.range(0, found.size()).allMatch(q -> found.comparisons(q) == MAP.size()));
		assertEquals(MAP.size(), found.meanComparisons());
		assertEquals(0, estimate(plain(MAP, Voting.NEAREST), MAP.view(new int[0]), HERE).meanComparisons());
	}

	@Test
	void takeASampleForItsOwnNearest() {
		Estimates found = estimate(plain(MAP, Voting.NEAREST), MAP, HERE);
		Signals signals = Signals.of(MAP);
		Neighbours.Search search = new Neighbours(signals).search();
		for (int s = 0; s < MAP.size(); s++) {
			boolean alone = search.ofSample(s, 1).distance(0) > 0;
			assertTrue(!alone || MAP.x(s) == found.x(s) && MAP.y(s) == found.y(s), "sample " + s);
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3 })
	void doNotDependOnTheNumberOfThreads(int count) {
		Matcher matcher = plain(MAP, Voting.THREE_WEIGHTED);
		Estimates expected = estimate(matcher, WHOLE, HERE);
		try (Threads threads = new Threads(count)) {
			for (int run = 0; run < 4; run++) {
				assertSame(MAP, expected, MAP, estimate(matcher, WHOLE, threads.workers()));
			}
		}
	}
}
