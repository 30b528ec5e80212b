package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * How well the rules find what was planted, on Marrow Quay and on three campuses whose seeds no threshold was chosen
 * by (those used while the rules were made were 101 to 103 and others below 6000; one rule, stuck-level, was made to
 * leave codes for not heard to another after these three had shown the double report). The table goes to the log of the
 * test run and, with {@link #main}, to the console; bounds lie well below it.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RuleScoresTest {

	private static final String MARROW_QUAY = "Marrow Quay, seed 1";

	private final Map<String, RuleScores> campuses = new LinkedHashMap<>();

	/** Prints precision and recall, rule by rule and campus by campus. */
	public static void main(String[] args) {
		RuleScoresTest test = new RuleScoresTest();
		test.check();
	}

	@BeforeAll
	void check() {
		add(MARROW_QUAY, MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED));
		add("3 sites, seed 6601", FaultyCampus.surveys(6601, CampusSize.of(3, 3, 140)));
		add("2 sites, seed 6602", FaultyCampus.surveys(6602, CampusSize.of(2, 4, 120)));
		add("4 sites, seed 6603", FaultyCampus.surveys(6603, CampusSize.of(4, 2, 190)));
		System.out.print(RuleScoreTable.of(campuses));
	}

	private void add(String name, SimulatedArchive archive) {
		SurveyedMap map = SimulatedSurveys.of(archive);
		RunResult result = new RuleRun(CleaningRules.registry().all()).over(map, Workers.inline());
		assertEquals(List.of(), result.failed());
		campuses.put(name, new RuleScores(archive, map, result));
	}

	/** Over the three fresh campuses together. */
	private Map<String, RuleScores.Score> sums() {
		Map<String, RuleScores.Score> sums = new TreeMap<>();
		campuses.forEach((name, scores) -> {
			if (!name.equals(MARROW_QUAY)) {
				scores.all()
						.forEach((rule, s) -> sums.merge(rule, s, (a, b) -> new RuleScores.Score(a.found() + b.found(),
								a.right() + b.right(), a.planted() + b.planted(), a.met() + b.met())));
			}
		});
		return sums;
	}

	private static void assertScore(Map<String, RuleScores.Score> scores, String rule, double precision,
			double recall) {
		RuleScores.Score score = scores.get(rule);
		assertTrue(score.precision() >= precision, rule + ": precision " + score);
		assertTrue(score.recall() >= recall, rule + ": recall " + score);
	}

	@Test
	void findAllThatIsPlantedInMarrowQuayAndNothingElse() {
		Map<String, RuleScores.Score> scores = campuses.get(MARROW_QUAY).all();
		for (String rule : List.of("hotspot", "moved-access-point", "duplicate-survey", "device-offset")) {
			assertScore(scores, rule, 1, 1);
		}
		assertScore(scores, "swapped-axes", 0.9, 0.8);
		assertScore(scores, "wrong-floor", 0.9, 0.9);
		assertTrue(scores.get("wrong-place").found() <= 3, scores.get("wrong-place").toString());
	}

	@Test
	void findWhatIsSafelyToldOnAnyCampus() {
		for (String rule : List.of("duplicate-survey", "device-offset", "exact-duplicate", "few-readings",
				"repeated-scan",
				"not-heard-code", "one-scan-two-places", "outside-outline", "impossible-address", "level-out-of-range",
				"saturated-levels", "coverage-gap", "vanished-access-point", "new-access-point", "levels-apart")) {
			assertScore(sums(), rule, 0.9, 0.9);
		}
	}

	@Test
	void findMostOfWhatMustBeInferred() {
		Map<String, RuleScores.Score> sums = sums();
		assertScore(sums, "hotspot", 0.6, 1);
		assertScore(sums, "moved-access-point", 0.6, 0.8);
		assertScore(sums, "shared-radio", 0.9, 0.6);
		assertScore(sums, "stuck-level", 0.4, 1);
		assertScore(sums, "contradictory-samples", 0.9, 0.6);
		assertScore(sums, "swapped-axes", 0.85, 0.6);
		assertScore(sums, "wrong-floor", 0.8, 0.85);
		assertScore(sums, "wrong-place", 0.85, 0.65);
		assertScore(sums, "jump", 0.85, 0.5);
		assertScore(sums, "local-address", 1, 0.8);
		assertScore(sums, "rarely-heard", 0.9, 0.75);
	}
}
