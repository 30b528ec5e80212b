package org.cairnfield.curation.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.demo.DemoArchive;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
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
			assertEquals(6, bySample.values().stream().flatMap(List::stream).filter(f -> f.rule().equals("levels-apart")).count());
			assertTrue(bySample.values().stream().flatMap(List::stream).filter(f -> f.rule().equals("duplicate-survey")).count() >= 262);
		}
	}

	@Test
	void takesOverWhatItKnowsOfRules() throws Exception {
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			RuleRun rules = new RuleRun(CleaningRules.registry().some(List.of("wrong-floor")));
			RuleCheck first = RuleCheck.of(open.archive(), rules, Workers.inline());
			RuleCheck again = RuleCheck.of(open.archive(), rules, first, Workers.inline());
			assertEquals(0, again.result().computed());
			assertEquals(first.open(), again.open());
			assertTrue(again.open().get(0).precision().isPresent());
			first.result().results().forEach(each -> assertSame(first.tests().of(each).orElse(null), again.tests().of(each).orElse(null)));
		}
	}
}
