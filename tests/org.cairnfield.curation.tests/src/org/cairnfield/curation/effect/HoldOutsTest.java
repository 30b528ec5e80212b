package org.cairnfield.curation.effect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HoldOutsTest {

	private static final Workers WORKERS = Workers.inline();

	private SurveyedMap map;
	private HoldOuts holdOuts;

	@BeforeAll
	void ask() {
		map = MeasuredSet.demo().map();
		holdOuts = new HoldOuts(map, Set.of(), WORKERS);
	}

	private List<String> some(int every) {
		return IntStream.range(0, map.size()).filter(s -> s % every == 0).mapToObj(map::sampleId).toList();
	}

	private MapEffect effect(Remedy... remedies) {
		return holdOuts.effect(List.of(remedies), WORKERS).onHoldOuts();
	}

	@Test
	void tellTheSameByNeighboursAndByAskingAgain() {
		Remedy aside = new Remedy.SetAsideSamples(some(3), "a third");
		Remedy noReading = new Remedy.DropReadings(List.of(), "none"); // makes them ask again
		MapEffect known = effect(aside);
		MapEffect again = effect(aside, noReading);
		assertTrue(known.questions() > 1000);
		assertEquals(known.questions(), again.questions());
		assertEquals(known.errorAfterMetres(), again.errorAfterMetres(), 1e-9);
		assertEquals(known.rightFloorAfter(), again.rightFloorAfter(), 1e-9);
		assertEquals(known.errorChange().low(), again.errorChange().low(), 1e-9);
		assertEquals(known.floorChange().high(), again.floorChange().high(), 1e-9);
	}

	@Test
	void seeThatMendedFloorsHelp() {
		List<Finding> findings = new RuleRun(CleaningRules.registry().some(List.of("wrong-floor"))).over(map, WORKERS)
				.findings();
		RemedyEffect effect = holdOuts.effect(findings.stream().map(finding -> finding.remedy().orElseThrow()).toList(),
				WORKERS);
		assertEquals(11, effect.samples());
		assertEquals(0, effect.accessPoints());
		assertTrue(effect.onHoldOuts().isBetter() && !effect.onHoldOuts().isWorse(), effect::toString);
		assertTrue(effect.words().startsWith("Touches 11 samples. Makes positions better. On "), effect.words());
	}

	@Test
	void seeThatSpoiltFloorsHarm() {
		MapEffect effect = effect(new Remedy.SetFloor(some(4), 1));
		assertTrue(effect.isWorse(), effect::toString);
		assertTrue(effect.rightFloorAfter() < effect.rightFloorBefore() - 0.05, effect::toString);
	}

	@Test
	void seeThatAnAccessPointIsMissed() {
		List<String> half = map.map().accessPoints().subList(0, map.map().accessPointCount() / 2);
		RemedyEffect effect = holdOuts.effect(List.of(new Remedy.SetAsideAccessPoints(half, "half of all")), WORKERS);
		assertEquals(half.size(), effect.accessPoints());
		assertTrue(effect.onHoldOuts().errorChange().low() > 0, effect::toString);
	}

	@Test
	void sayThatNothingChangesWhereNothingDoes() {
		RemedyEffect effect = holdOuts.effect(List.of(new Remedy.CalibrateDevice("B", "B", -5)), WORKERS);
		assertFalse(effect.onHoldOuts().isBetter() || effect.onHoldOuts().isWorse());
		assertTrue(effect.words().startsWith("Touches no sample. No measurable change."), effect.words());
	}

	@Test
	void haveNothingToSayWhereNoSampleIsLeft() {
		RemedyEffect effect = holdOuts.effect(List.of(new Remedy.SetAsideSamples(some(1), "all")), WORKERS);
		assertFalse(effect.onHoldOuts().isKnown());
		assertTrue(effect.words().contains("no sample is left to measure the effect with"), effect.words());
	}

	@Test
	void askTheSameOfEveryChoice() {
		Remedy third = new Remedy.SetAsideSamples(some(3), "a third");
		Remedy half = new Remedy.SetAsideSamples(some(2), "a half");
		List<RemedyEffect> effects = holdOuts.effects(List.of(List.of(third), List.of(half), List.of()), WORKERS);
		assertEquals(List.of(some(3).size(), some(2).size(), 0), effects.stream().map(RemedyEffect::samples).toList());
		assertEquals(1, effects.stream().map(effect -> effect.onHoldOuts().questions()).distinct().count(),
				effects::toString);
		assertTrue(effects.get(0).onHoldOuts().questions() < effect(third).questions());
		assertEquals(effects.get(0).onHoldOuts().errorBeforeMetres(), effects.get(1).onHoldOuts().errorBeforeMetres(),
				1e-9);
	}

	@Test
	void seeAnAverageAsTheArchiveWouldHaveIt() {
		List<List<String>> groups = List.of(map.ids(0, 1), map.ids(2, 3, 4));
		RemedyEffect effect = holdOuts.effect(List.of(new Remedy.AverageSamples(groups, "for a test")), WORKERS);
		assertEquals(5, effect.samples());
		SurveyedMap after = RemediedMap.of(map, List.of(new Remedy.AverageSamples(groups, "for a test"))).map();
		assertEquals(map.size() - 3, after.size());
		assertEquals(List.of(map.sampleId(0), map.sampleId(2), map.sampleId(5)), after.ids(0, 1, 2));
	}

	@Test
	void askNobodyInDoubt() {
		Set<String> doubtful = Set.copyOf(some(2));
		MapEffect without = new HoldOuts(map, doubtful, WORKERS).effect(List.of(), WORKERS).onHoldOuts();
		assertEquals(effect().questions() / 2.0, without.questions(), 5);
	}

	@Test
	void canBeCancelled() {
		Workers cancelled = Workers.inline().reportingTo(new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		});
		assertThrows(CancellationException.class, () -> new HoldOuts(map, Set.of(), cancelled));
		assertThrows(CancellationException.class,
				() -> holdOuts.effect(List.of(new Remedy.SetAsideAccessPoints(List.of(), "")), cancelled));
	}
}
