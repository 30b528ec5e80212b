package org.cairnfield.curation.internal.selftest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.Judgement;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.effect.SparseHalls;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleResult;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.SimulatedSurveys;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.internal.rules.place.WrongFloorRule;
import org.junit.jupiter.api.Test;

class SelfTestsTest {

	private final WrongFloorRule rule = new WrongFloorRule();

	private static SelfTests tests(SurveyedMap map, RuleRun run, RunResult result) {
		return SelfTests.over(map, result, run, SelfTests.NONE, Workers.inline());
	}

	@Test
	void disownARuleThatIsTooBluntForTheMap() {
		SurveyedMap halls = SparseHalls.of(6).map();
		Settings blunt = Settings.USUAL.with(WrongFloorRule.LEAST, 4).with(WrongFloorRule.OWN, 3)
				.with(WrongFloorRule.RATIO, 1);
		RuleRun run = new RuleRun(List.of(rule), Map.of(rule.id(), blunt));
		RunResult result = run.over(halls, Workers.inline());
		List<Finding> judged = Judgement.of(result, tests(halls, run, result), run);
		assertTrue(judged.size() >= 5, judged::toString);
		for (Finding finding : judged) {
			assertTrue(finding.precision().orElseThrow() < 0.5, finding::toString);
			assertEquals(Severity.NOTE, finding.severity());
			assertEquals(Optional.empty(), finding.remedy());
			assertTrue(Judgement.words(finding).endsWith("So no remedy is offered."), Judgement.words(finding));
		}
	}

	/** Counts how often a rule is asked. */
	private final class Counted extends DescribedRule {
		private final List<String> asked = Collections.synchronizedList(new ArrayList<>());

		Counted() {
			super(rule.id(), rule.title(), rule.explanation(), rule.severity(), rule.topic(), rule.scope());
		}

		@Override
		public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
			asked.add(input.unit());
			return rule.check(input, settings, workers);
		}
	}

	@Test
	void tryOutAgainOnlyWhatHasChanged() {
		SurveyedMap map = SimulatedSurveys.of(FaultyCampus.surveys(6602, CampusSize.of(2, 4, 120)));
		Counted counted = new Counted();
		RuleRun run = new RuleRun(List.of((Rule) counted));
		RunResult result = run.over(map, Workers.inline());
		SelfTests first = tests(map, run, result);
		List<String> sites = map.map().sites();
		assertEquals(2, sites.size());
		counted.asked.clear();
		SelfTests.over(map, run.over(map, result, Workers.inline()), run, first, Workers.inline());
		assertEquals(List.of(), counted.asked);
		int moved = IntStream.range(0, map.size()).filter(s -> map.site(s).equals(sites.get(1))).findFirst()
				.orElseThrow();
		SurveyedMap changed = RemediedMap
				.of(map, List.of(new Remedy.SetAsideSamples(List.of(map.sampleId(moved)), "one"))).map();
		RunResult again = run.over(changed, result, Workers.inline());
		counted.asked.clear();
		SelfTests.over(changed, again, run, first, Workers.inline());
		assertEquals(List.of(sites.get(1)), counted.asked);
	}

	@Test
	void askNothingOfARuleThatFoundNothing() {
		SurveyedMap halls = SparseHalls.of(4).map();
		Counted counted = new Counted();
		RuleRun run = new RuleRun(List.of((Rule) counted));
		RunResult result = run.over(halls, Workers.inline());
		counted.asked.clear();
		tests(halls, run, result);
		assertEquals(List.of(), counted.asked);
	}

	@Test
	void sayTheSameOfTheSameMap() {
		SurveyedMap map = SimulatedSurveys.of(FaultyCampus.surveys(5, CampusSize.of(2, 3, 90)));
		RuleRun run = new RuleRun(List.of(rule));
		RunResult result = run.over(map, Workers.inline());
		Map<String, Optional<Expectation>> first = new HashMap<>();
		SelfTests tests = tests(map, run, result);
		result.results().forEach(each -> first.put(each.unit(), tests.of(each)));
		SelfTests again = tests(map, run, result);
		for (RuleResult each : result.results()) {
			assertEquals(first.get(each.unit()), again.of(each));
		}
		assertNotEquals(List.of(), first.values().stream().flatMap(Optional::stream).toList());
	}

	@Test
	void expectLittleOfFindingsThatAreWeakerThanFaults() {
		double[] faults = IntStream.range(0, 100).mapToDouble(i -> 2 + i / 50.0).toArray();
		double[] weak = IntStream.range(0, 100).mapToDouble(i -> 1.3 + i / 200.0).toArray();
		assertEquals(1, Strengths.share(faults, faults));
		assertEquals(0, Strengths.share(weak, faults), 0.01);
		double[] half = IntStream.range(0, 200).mapToDouble(i -> i < 100 ? faults[i] : weak[i - 100]).toArray();
		assertEquals(0.5, Strengths.share(half, faults), 0.02);
	}
}
