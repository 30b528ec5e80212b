package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.testkit.OpenSets;
import org.junit.jupiter.api.Test;

/**
 * What the rules say of openly published surveys: known facts about them, and few words.
 */
class RulesOnOpenSurveysTest {

	private static SurveyedMap read(String set, String part) throws IOException, IntakeException {
		Intake in = SurveyIntake.read(OpenSets.files(set, part), IntakeOptions.GUESS, Progress.NONE);
		RadioMap map = in.map();
		List<Survey> surveys = new ArrayList<>();
		int[] surveyOf = new int[map.size()];
		int at = 0;
		for (FileReport report : in.reports()) {
			if (!report.part().equals("table") && !report.part().equals("signals")) {
				continue;
			}
			for (int end = at + (int) report.accepted(); at < end; at++) {
				surveyOf[at] = surveys.size();
			}
			if (report.accepted() > 0 && at > 0) {
				long time = map.timeMillis(at - 1);
				Optional<LocalDate> date = time == RadioMap.NO_TIME ? Optional.empty()
						: Optional.of(Instant.ofEpochMilli(time).atZone(ZoneOffset.UTC).toLocalDate());
				surveys.add(new Survey(report.file().getFileName().toString(), map.sites().get(map.site(at - 1)), date, "",
						Optional.empty()));
			}
		}
		return new SurveyedMapBuilder(map, in.sampleIds(), surveyOf, surveys).build();
	}

	private static RunResult check(SurveyedMap map) {
		RunResult result = new RuleRun(CleaningRules.registry().all()).over(map, Workers.inline());
		assertEquals(List.of(), result.failed());
		return result;
	}

	private static double sum(RunResult result, String rule, String figure) {
		return result.findings(rule).stream().mapToDouble(f -> f.figure(figure)).sum();
	}

	@Test
	void tellWhatIsKnownOfThreeBuildings() throws IOException, IntakeException {
		RunResult result = check(read("three-buildings", "Training"));
		// Counted from the files: three quarters of the rows repeat an earlier scan, 59 fingerprints recur at
		// other places (30 of them directly after one another), 50 places contradict themselves by 30 dB.
		assertEquals(0.75, sum(result, "repeated-scan", "repeats") / 21_205, 0.02);
		assertEquals(30, sum(result, "repeated-scan", "at another place"));
		assertEquals(30, sum(result, "one-scan-two-places", "scans"));
		assertEquals(50, sum(result, "levels-apart", "places"));
		assertEquals(540, sum(result, "level-out-of-range", "too strong"));
		assertTrue(result.findings().size() <= 25, result.findings().size() + " findings");
		assertTrue(result.findings("wrong-place").size() <= 4);
		assertEquals(0, result.findings("swapped-axes").size());
	}

	@Test
	void sayLittleOfACleanWalk() throws IOException, IntakeException {
		RunResult result = check(read("walked-floor", ".csv"));
		assertTrue(result.findings().size() <= 15, result.findings().toString());
		assertEquals(7, result.findings("levels-apart").size());
		assertEquals(0, result.findings("jump").size());
	}

	@Test
	void doNotTakeChanceForCopiesWhereFiveAccessPointsAreHeard() throws IOException, IntakeException {
		RunResult result = check(read("grid-areas", ".csv"));
		assertEquals(0, result.findings("repeated-scan").size() + result.findings("exact-duplicate").size()
				+ result.findings("one-scan-two-places").size());
		assertEquals(1, result.findings("hotspot").size(), "names are used anew in each area, said once");
		assertTrue(result.findings().size() <= 12, result.findings().size() + " findings");
	}
}
