package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.exchange.IntakeException;
import org.junit.jupiter.api.Test;

/**
 * What the rules say of openly published surveys: known facts about them, and few words. Skipped where they are
 * absent: the property or environment variable CAIRNFIELD_DATA names their folder, otherwise {@code ../shared/data}
 * beside the project.
 */
class RulesOnOpenSurveysTest {

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
		RunResult result = check(OpenSurveys.read("three-buildings", "Training"));
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
		RunResult result = check(OpenSurveys.read("walked-floor", ".csv"));
		assertTrue(result.findings().size() <= 15, result.findings().toString());
		assertEquals(7, result.findings("levels-apart").size());
		assertEquals(0, result.findings("jump").size());
	}

	@Test
	void doNotTakeChanceForCopiesWhereFiveAccessPointsAreHeard() throws IOException, IntakeException {
		RunResult result = check(OpenSurveys.read("grid-areas", ".csv"));
		assertEquals(0, result.findings("repeated-scan").size() + result.findings("exact-duplicate").size()
				+ result.findings("one-scan-two-places").size());
		assertEquals(1, result.findings("hotspot").size(), "names are used anew in each area, said once");
		assertTrue(result.findings().size() <= 12, result.findings().size() + " findings");
	}
}
