package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.AutomaticChoice.Choice;
import org.cairnfield.core.choose.AutomaticChoice.Tried;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

/** The choice site by site, and in a time that is given; by a clock that goes on whenever somebody looks at it. */
class ChoiceInTimeTest {

	private static final Workers HERE = Workers.inline();
	private static final int SITES = 3;
	private static final int IN_EACH = 300;
	private static final RadioMap MAP = map();
	private static final Signals SIGNALS = Signals.of(MAP);
	private static final List<int[]> BY_SITE = IntStream.range(0, SITES)
			.mapToObj(site -> IntStream.range(0, MAP.size()).filter(s -> MAP.site(s) == site).toArray()).toList();

	/** Sites that do not hear each other. */
	private static RadioMap map() {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int site = 0; site < SITES; site++) {
			RadioMap one = new SimulatedSite(site + 3).map;
			for (int s = 0; s < IN_EACH; s++) {
				b.sample("house " + site, one.floor(s), one.x(s), one.y(s));
				for (int k = one.firstReading(s); k < one.endReading(s); k++) {
					b.reading(site + one.accessPoints().get(one.accessPoint(k)), one.rssiDbm(k));
				}
			}
		}
		return b.build();
	}

	private static AutomaticChoice choice(List<int[]> parts, TimeLimit limit) {
		return new AutomaticChoice(SIGNALS, parts, 3, 1, limit, HERE);
	}

	private static TimeLimit never() {
		return TimeLimit.of(TimeLimit.NEVER);
	}

	@Test
	void theErrorOfSitesIsTheMeanOfEach() {
		double epsilon = 90;
		Choice together = choice(BY_SITE, never()).searchFor(epsilon);
		Map<Search, Double> sums = new HashMap<>();
		int questions = 0;
		for (int[] site : BY_SITE) {
			Signals alone = Signals.ofPart(MAP.view(site), SIGNALS.representation(), SIGNALS.distance(),
					SIGNALS.lowestRssiDbm());
			Choice one = new AutomaticChoice(alone, List.of(IntStream.range(0, IN_EACH).toArray()), 3, 1, never(), HERE)
					.searchFor(epsilon);
			one.tried().stream().filter(t -> !t.search().cut())
					.forEach(t -> sums.merge(t.search(), t.meanErrorMetres() / SITES, Double::sum));
			questions += one.questions();
		}
		List<Tried> uncut = together.tried().stream().filter(t -> !t.search().cut()).toList(); // what is large depends on the whole map
		assertEquals(sums.size(), uncut.size());
		uncut.forEach(t -> assertEquals(sums.get(t.search()), t.meanErrorMetres(), 1e-9, t.search()::toString));
		assertEquals(questions, together.questions());
		assertTrue(together.leftOut().isNothing());
	}

	/** What is reckoned from sites against what is measured on the whole. */
	@Test
	void comparisonsAreReckonedForTheWholeMap() {
		Map<Search, Tried> whole = new HashMap<>();
		choice(List.of(IntStream.range(0, MAP.size()).toArray()), never()).searchFor(90).tried()
				.forEach(t -> whole.put(t.search(), t));
		for (Tried t : choice(BY_SITE, never()).searchFor(90).tried()) {
			double measured = whole.get(t.search()).comparisonShare();
			if (measured < 0.3) { // above, a group may be all that a site has
				assertEquals(measured, t.comparisonShare(), 0.1 * measured, t.search()::toString);
			}
			assertTrue(t.sampleShare() > 0 && t.sampleShare() < t.comparisonShare());
		}
	}

	@Test
	void epsilonIsThatOfAllSites() {
		List<Double> whole = choice(List.of(IntStream.range(0, MAP.size()).toArray()), never()).choose().tried()
				.stream().map(Tried::epsilon).distinct()
				.sorted().toList();
		List<Double> bySite = choice(BY_SITE, never()).choose().tried().stream().map(Tried::epsilon).distinct().sorted()
				.toList();
		assertEquals(whole, bySite); // sites that hear each other less than themselves have the same nearest
	}

	@Test
	void whatThereIsNoTimeForIsLeftOutAndSaid() {
		AtomicLong clock = new AtomicLong();
		Choice all = choice(BY_SITE, TimeLimit.of(TimeLimit.NEVER, clock::incrementAndGet)).choose();
		long looks = clock.get();
		int sitesLeft = SITES;
		boolean epsilonsLeft = false;
		boolean holdOutsLeft = false;
		for (int part = 1; part <= 40; part += part < 12 ? 1 : 4) { // 40 among them
			clock.set(0);
			TimeLimit limit = TimeLimit.of(Duration.ofNanos(looks * part / 40), clock::incrementAndGet);
			Choice some = choice(BY_SITE, limit).choose();
			assertTrue(clock.get() <= looks * part / 40 + 40, "went on when the time was over");
			assertTrue(some.leftOut().sites().size() <= sitesLeft, "more time, and fewer sites");
			sitesLeft = some.leftOut().sites().size();
			epsilonsLeft |= some.leftOut().epsilons() > 0;
			holdOutsLeft |= some.leftOut().holdOuts() > 0;
			if (some.leftOut().isNothing()) {
				assertEquals(all.tried(), some.tried());
			} else {
				assertTrue(some.questions() < all.questions() || some.leftOut().epsilons() > 0);
			}
		}
		assertTrue(sitesLeft < SITES && epsilonsLeft && holdOutsLeft,
				sitesLeft + " " + epsilonsLeft + " " + holdOutsLeft);
	}

	@Test
	void withoutTimeForAnEpsilonItRefuses() {
		AtomicLong clock = new AtomicLong();
		AutomaticChoice none = choice(BY_SITE, TimeLimit.of(Duration.ofNanos(2), clock::incrementAndGet));
		assertThrows(TooLittleTimeException.class, none::choose);
	}
}
