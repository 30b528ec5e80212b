package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.curation.internal.rules.place.WrongFloorRule;
import org.cairnfield.curation.internal.rules.sample.FewReadingsRule;
import org.cairnfield.curation.internal.rules.sample.JumpRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RuleRunTest {

	private static final RuleRun ALL = new RuleRun(CleaningRules.registry().all());

	private static final class Broken extends DescribedRule {
		private final boolean whilePreparing;

		Broken(boolean whilePreparing) {
			super(whilePreparing ? "broken-early" : "broken", "Broken",
					"Breaks whenever it is asked about anything at all.",
					Severity.NOTE, Topic.SAMPLE, RuleScope.SURVEY);
			this.whilePreparing = whilePreparing;
		}

		@Override
		public void prepare(RuleInput input, Workers workers) {
			if (whilePreparing) {
				throw new IllegalStateException("no evidence");
			}
		}

		@Override
		public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
			throw new IllegalStateException("gave up");
		}
	}

	private static SurveyedMap small() {
		return new TinyMap().survey("a").sample(0, 0).survey("b").sample(1, 0, "ap1", -50).build();
	}

	@Test
	void aRuleThatBreaksStopsNoOther() {
		RuleRun run = new RuleRun(List.of(new Broken(false), new Broken(true), new FewReadingsRule()));
		RunResult result = run.over(small(), Workers.inline());
		assertEquals(1, result.findings().size());
		assertEquals(4, result.failed().size());
		String what = ((RuleOutcome.Failed) result.failed().get(0).outcome()).what();
		assertTrue(what.startsWith("java.lang.IllegalStateException: gave up at "), what);
		assertEquals(4, run.over(small(), result, Workers.inline()).computed(), "it is asked again next time");
	}

	@Test
	void anEmptyArchiveIsNoTrouble() {
		SurveyedMap empty = new SurveyedMapBuilder(new RadioMapBuilder().build(), List.of(), new int[0], List.of())
				.build();
		RunResult result = ALL.over(empty, Workers.inline());
		assertEquals(List.of(), result.failed());
		assertEquals(List.of(), result.findings());
		assertEquals(List.of(), ALL.over(small(), Workers.inline()).failed());
	}

	@Test
	void saysWhyARuleDoesNotApply() {
		RunResult result = new RuleRun(List.of(new JumpRule())).over(small(), Workers.inline());
		assertEquals(new RuleOutcome.NotApplicable("samples have no times"), result.results().get(0).outcome());
	}

	@Test
	void reportsProgressAndCanBeCancelled() {
		AtomicLong begun = new AtomicLong();
		AtomicLong advanced = new AtomicLong();
		Progress counting = new Progress() {
			@Override
			public void begin(String step, long units) {
				begun.addAndGet(units);
			}

			@Override
			public void advance(long units) {
				advanced.addAndGet(units);
			}
		};
		new RuleRun(List.of(new FewReadingsRule(), new Broken(true))).over(small(),
				Workers.inline().reportingTo(counting));
		assertEquals(begun.get(), advanced.get());
		assertTrue(begun.get() > 0);
		Progress impatient = new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		};
		assertThrows(CancellationException.class, () -> ALL.over(small(), Workers.inline().reportingTo(impatient)));
	}

	@Test
	void cancelsWithinARule() {
		SurveyedMap map = SimulatedSurveys.of(MarrowQuay.surveys(1));
		AtomicLong asked = new AtomicLong();
		Progress soon = new Progress() {
			@Override
			public boolean isCancelled() {
				return asked.incrementAndGet() > 10;
			}
		};
		assertThrows(CancellationException.class,
				() -> new RuleRun(List.of(new WrongFloorRule())).over(map, Workers.inline().reportingTo(soon)));
		assertTrue(asked.get() < 20, asked + " times asked");
	}

	@Test
	void isTheSameWhateverTheWorkers() {
		SurveyedMap map = SimulatedSurveys.of(FaultyCampus.surveys(7, CampusSize.of(2, 2, 60)));
		RunResult alone = ALL.over(map, Workers.inline());
		ExecutorService executor = Executors.newFixedThreadPool(3);
		try {
			assertTrue(alone.saysTheSame(ALL.over(map, Workers.on(executor, 4, Progress.NONE))));
		} finally {
			executor.shutdownNow();
		}
		assertEquals(List.of(), alone.failed());
		assertFalse(alone.findings().isEmpty());
	}

	/** Remedies of chance findings, and chance samples set aside or put elsewhere. */
	private static SurveyedMap changed(SurveyedMap map, RunResult result, Random random) {
		List<Remedy> remedies = new ArrayList<>();
		List<Finding> findings = new ArrayList<>(result.findings());
		Collections.shuffle(findings, random);
		findings.stream().limit(2).flatMap(f -> f.remedy().stream()).forEach(remedies::add);
		String id = map.sampleId(random.nextInt(map.size()));
		remedies.add(random.nextBoolean() ? new Remedy.SwapAxes(List.of(id))
				: new Remedy.SetAsideSamples(List.of(id), "by chance"));
		return RemediedMap.of(map, remedies).map();
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void inStepsSaysWhatAFullRunSays(long seed) {
		Random random = new Random(seed);
		SurveyedMap map = SimulatedSurveys.of(FaultyCampus.surveys(seed, CampusSize.of(2, 2, 50)));
		RunResult result = ALL.over(map, Workers.inline());
		for (int step = 0; step < 5; step++) {
			map = changed(map, result, random);
			result = ALL.over(map, result, Workers.inline());
			assertTrue(result.saysTheSame(ALL.over(map, Workers.inline())), "step " + step);
		}
	}

	@Test
	void asksAgainOnlyWhereSomethingChanged() {
		SurveyedMap map = SimulatedSurveys.of(FaultyCampus.surveys(5, CampusSize.of(3, 2, 60)));
		RunResult first = ALL.over(map, Workers.inline());
		assertEquals(0, ALL.over(map, first, Workers.inline()).computed());
		int sample = IntStream.range(0, map.size())
				.filter(s -> map.site(s).equals("Site S02") && map.map().heard(s) > 3)
				.findFirst().orElseThrow();
		SurveyedMap changed = RemediedMap.of(map,
				List.of(new Remedy.SetAsideSamples(List.of(map.sampleId(sample)), "by hand"))).map();
		RunResult second = ALL.over(changed, first, Workers.inline());
		String survey = map.surveys().get(map.survey(sample)).id();
		String floor = "Site S02, floor " + map.map().floor(sample);
		Set<String> units = second.results().stream().filter(r -> !r.reused()).map(RuleResult::unit)
				.collect(Collectors.toCollection(TreeSet::new));
		assertEquals(new TreeSet<>(Set.of("", "Site S02", survey, floor)), units);
		assertTrue(second.saysTheSame(ALL.over(changed, Workers.inline())));
	}

	@Test
	void asksAgainWhateverChanges() {
		TinyMap tiny = new TinyMap().survey("a").sample(0, 0, "ap1", -50, "ap2", -60).sample(9, 0, "ap1", -70);
		SurveyedMap map = tiny.build();
		List<UnaryOperator<SurveyedMapBuilder>> changes = List.of(b -> b.setAside("ap1"),
				b -> b.offset("Wrist guide A", 2),
				b -> b.device("Wrist guide A", "guide-7"), b -> b.radio("ap1", "r"),
				b -> b.floor(new FloorPlan(TinyMap.SITE, 0, Optional.empty(), Optional.of(4.0))));
		for (RuleScope scope : RuleScope.values()) {
			RuleRun run = new RuleRun(List.of(new Silent(scope)));
			RunResult before = run.over(map, Workers.inline());
			assertEquals(0, run.over(tiny.build(), before, Workers.inline()).computed());
			for (int i = 0; i < changes.size(); i++) {
				assertEquals(1, run.over(tiny.build(changes.get(i)), before, Workers.inline()).computed(),
						scope + " " + i);
			}
			SurveyedMap offset = tiny.build(b -> b.offset("Wrist guide A", 2));
			RunResult then = run.over(offset, Workers.inline());
			assertEquals(1, run.over(tiny.build(b -> b.offset("Wrist guide A", 3)), then, Workers.inline()).computed());
		}
		SurveyedMap elsewhere = tiny.build(b -> b.floor(
				new FloorPlan("Lantern Store", 0, Optional.empty(), Optional.of(4.0))));
		RuleRun run = new RuleRun(List.of(new Silent(RuleScope.SITE)));
		assertEquals(0, run.over(elsewhere, run.over(map, Workers.inline()), Workers.inline()).computed(),
				"a floor of another site");
	}

	private static final class Silent extends DescribedRule {
		Silent(RuleScope scope) {
			super("silent", "Silent", "Looks at everything that there is and never says a word about it.",
					Severity.NOTE,
					Topic.SAMPLE, scope);
		}

		@Override
		public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
			return RuleOutcome.found(List.of());
		}
	}

	@Test
	void asksAgainWhereASettingChanged() {
		RuleRun usual = new RuleRun(List.of(new FewReadingsRule(), new JumpRule()));
		RuleRun strict = new RuleRun(List.of(new FewReadingsRule(), new JumpRule()),
				Map.of("few-readings", Settings.USUAL.with(FewReadingsRule.FEWEST, 5)));
		RunResult before = usual.over(small(), Workers.inline());
		assertEquals(2, strict.over(small(), before, Workers.inline()).computed());
	}

	@Test
	void doesNotDependOnTheOrderOfSamplesAndAccessPoints() {
		SurveyedMap map = SimulatedSurveys.of(MarrowQuay.surveys(1));
		List<Integer> order = new ArrayList<>(IntStream.range(0, map.size()).boxed().toList());
		Collections.shuffle(order, new Random(4));
		SurveyedMap shuffled = RemediedMap.of(map.only(order.stream().mapToInt(i -> i).toArray()), List.of()).map();
		Set<String> first = keys(ALL.over(map, Workers.inline()));
		assertEquals(first, keys(ALL.over(shuffled, Workers.inline())));
		assertTrue(first.size() >= 9, first.toString());
	}

	private static Set<String> keys(RunResult result) {
		return result.findings().stream().map(f -> f.rule() + " " + f.contentKey())
				.collect(Collectors.toCollection(TreeSet::new));
	}

	/** What a remedy has put right is not reported again. */
	@ParameterizedTest
	@ValueSource(longs = { 11, 12 })
	void remediesHelp(long seed) {
		SurveyedMap map = SimulatedSurveys.of(FaultyCampus.surveys(seed, CampusSize.of(2, 3, 80)));
		RunResult result = ALL.over(map, Workers.inline());
		Set<String> seen = new TreeSet<>();
		for (Rule rule : CleaningRules.registry().all()) {
			List<Finding> findings = result.findings(rule.id()).stream().filter(f -> f.remedy().isPresent()).toList();
			Set<String> keys = findings.stream().map(Finding::contentKey).collect(Collectors.toSet());
			SurveyedMap better = RemediedMap.ofFindings(map, findings).map();
			for (Finding again : TinyMap.findings(rule, better)) {
				assertFalse(keys.contains(again.contentKey()), again.toString());
			}
			seen.addAll(findings.isEmpty() ? Set.of() : Set.of(rule.id()));
		}
		assertTrue(seen.size() >= 17, seen.toString());
	}
}
