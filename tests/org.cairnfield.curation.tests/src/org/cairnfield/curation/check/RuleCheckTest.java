package org.cairnfield.curation.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.demo.DemoArchive;
import org.cairnfield.curation.internal.rules.place.WrongFloorRule;
import org.cairnfield.curation.internal.selftest.SelfTests;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.RuleResult;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleCheckTest {

	@TempDir
	Path folder;

	@Test
	void leadsFindingsAboutSurveysToTheirSamples() throws Exception {
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			RuleRun rules = new RuleRun(CleaningRules.registry().some(List.of("levels-apart", "duplicate-survey")));
			RuleCheck check = RuleCheck.of(open.archive(), rules, Workers.inline());
			Map<String, List<Finding>> bySample = check.openBySample();
			assertEquals(6, bySample.values().stream().flatMap(List::stream)
					.filter(f -> f.rule().equals("levels-apart")).count());
			assertTrue(bySample.values().stream().flatMap(List::stream).filter(f -> f.rule().equals("duplicate-survey"))
					.count() >= 262);
		}
	}

	@Test
	void takesOverWhatItKnowsOfAnArchiveThatIsOpenedAgain() throws Exception {
		RuleMemory memory = new RuleMemory(10_000);
		Counted rule = new Counted();
		RuleRun rules = new RuleRun(List.of(rule));
		ArchiveStore store = new ArchiveStore();
		RuleCheck first;
		try (OpenArchive open = DemoArchive.create(store, folder.resolve("demo"), Workers.inline())) {
			first = RuleCheck.of(open.archive(), rules, memory, Workers.inline());
		}
		int asked = rule.asked.get();
		assertTrue(asked > first.result().results().size(), "asked about copies with faults too");
		try (OpenArchive again = store.open(folder.resolve("demo"), Mode.READ)) {
			RuleCheck second = RuleCheck.of(again.archive(), rules, memory, Workers.inline());
			assertEquals(asked, rule.asked.get());
			assertEquals(0, second.result().computed());
			assertEquals(first.findings(), second.findings());
			assertEquals(first.tests(), second.tests());
			assertTrue(second.open().get(0).precision().isPresent());
		}
	}

	@Test
	void asksAgainWhereASampleOrASettingDiffersAndNotOnceItIsBack() throws Exception {
		RuleMemory memory = new RuleMemory(10_000);
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			Archive archive = open.archive();
			RuleRun rules = new RuleRun(List.of(new Counted()));
			RuleCheck first = RuleCheck.of(archive, rules, memory, Workers.inline());
			Survey survey = archive.getSites().get(0).getSurveys().get(0);
			SampleTable before = survey.table();
			survey.getSamples().setTable(before.edit().position(0, before.xMetres(0) + 30, before.yMetres(0)).done());
			RuleCheck moved = RuleCheck.of(archive, rules, memory, Workers.inline());
			assertEquals(1, moved.result().computed());
			RuleCheck full = RuleCheck.of(archive, rules, Workers.inline());
			assertEquals(full.tests(), moved.tests());
			assertEquals(full.findings(), moved.findings());
			assertNotEquals(first.tests(), moved.tests());
			survey.getSamples().setTable(before);
			assertEquals(0, RuleCheck.of(archive, rules, memory, Workers.inline()).result().computed());
			RuleRun strict = new RuleRun(List.of(new Counted()),
					Map.of("wrong-floor", Settings.USUAL.with(WrongFloorRule.LEAST, 7)));
			assertEquals(first.result().results().size(),
					RuleCheck.of(archive, strict, memory, Workers.inline()).result().computed());
		}
	}

	@Test
	void waivesWhatItTakesOver() throws Exception {
		RuleMemory memory = new RuleMemory(10_000);
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			RuleRun rules = new RuleRun(List.of(new Counted()));
			Finding finding = RuleCheck.of(open.archive(), rules, memory, Workers.inline()).open().get(0);
			open.archive().getWaivers()
					.add(RuleCheck.toModel(Waiver.of(finding, "a mezzanine", "J.K.", Instant.EPOCH)));
			RuleCheck waived = RuleCheck.of(open.archive(), rules, memory, Workers.inline());
			assertEquals(0, waived.result().computed());
			assertEquals(List.of(finding), waived.waived());
		}
	}

	/** A waiver is bound to content, and not to the number by which the content was found. */
	@Test
	void keepsWaiversWhereANumberOfTheRuleChanges() throws Exception {
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			Archive archive = open.archive();
			Rule rule = CleaningRules.registry().rule("level-out-of-range");
			Parameter highest = rule.parameter("highest-dbm");
			Finding finding = of(archive, rule.id()).open().get(0);
			archive.getWaivers().add(RuleCheck.toModel(Waiver.of(finding, "beside the mast", "J.K.", Instant.EPOCH)));
			assertEquals(List.of(), of(archive, rule.id()).open());

			new SetRuleSettingsCommand(archive, RuleSettings.USUAL.with(rule, highest, 0, "masts")).execute();
			assertEquals(List.of(), of(archive, rule.id()).findings(), "nothing is found, and nothing to cover");
			assertEquals("nothing that the rules report now", KeptWaiver.of(archive, List.of()).get(0).about());

			new SetRuleSettingsCommand(archive,
					RuleSettings.USUAL.with(rule, highest, highest.usual() - 10, "stricter")).execute();
			RuleCheck strict = of(archive, rule.id());
			assertTrue(strict.open().stream().anyMatch(more -> more.subjects().size() > finding.subjects().size()),
					"more than was waived shows again");

			new SetRuleSettingsCommand(archive, RuleSettings.USUAL).execute();
			assertEquals(List.of(finding), of(archive, rule.id()).waived(), "the waiver covers again what it did");
			new SetRuleSettingsCommand(archive, RuleSettings.USUAL.off(rule, "a mast")).execute();
			assertEquals(List.of(), of(archive, rule.id()).findings());
		}
	}

	private static RuleCheck of(Archive archive, String rule) {
		RuleCheck all = RuleCheck.remembering(archive, Workers.inline());
		return new RuleCheck(all.map(), all.result(), all.tests(),
				all.open().stream().filter(f -> f.rule().equals(rule)).toList(),
				all.waived().stream().filter(f -> f.rule().equals(rule)).toList());
	}

	@Test
	void forgetsWhatWasNotUsedForTheLongestTimeButNeverTheLastCheck() throws Exception {
		RuleMemory memory = new RuleMemory(20);
		RunResult first = result("a", 12);
		RunResult second = result("b", 6);
		memory.keep(first, SelfTests.NONE);
		memory.keep(second, SelfTests.NONE);
		assertEquals(List.of("b"), units(memory), "14 and 8 are more than 20");
		RunResult third = result("c", 3);
		memory.keep(third, SelfTests.NONE);
		memory.keep(second, SelfTests.NONE);
		memory.keep(result("d", 6), SelfTests.NONE);
		assertEquals(List.of("b", "d"), units(memory));
		memory.keep(result("e", 100), SelfTests.NONE);
		assertEquals(List.of("e"), units(memory));
	}

	private static List<String> units(RuleMemory memory) {
		return memory.results().results().stream().map(RuleResult::unit).toList();
	}

	/** One finding about so many access points. */
	private static RunResult result(String unit, int subjects) {
		List<Subject> about = IntStream.range(0, subjects).mapToObj(i -> (Subject) new Subject.OfAccessPoint("ap" + i))
				.toList();
		Finding finding = Finding.of(new Counted()).message("Something.").about(about).build();
		return new RunResult(List.of(
				new RuleResult("wrong-floor", unit, RuleOutcome.found(List.of(finding)), unit.hashCode(), 1, false)));
	}

	/** Counts how often it is asked. */
	private static final class Counted extends DescribedRule {
		private final WrongFloorRule rule = new WrongFloorRule();
		private final AtomicInteger asked = new AtomicInteger();

		Counted() {
			super("wrong-floor", "Wrong floor", "As the rule of that name says.", Severity.ERROR, Topic.SAMPLE,
					new WrongFloorRule().scope());
		}

		@Override
		public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
			asked.incrementAndGet();
			return rule.check(input, settings, workers);
		}
	}
}
