package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.curation.internal.selftest.Expectation;
import org.cairnfield.curation.internal.selftest.SelfTests;
import org.junit.jupiter.api.Test;

/**
 * The precision that rules expect of themselves, from faults planted into a copy of the map, beside the precision that they have, from
 * the truth of simulated campuses.
 */
class SelfTestCalibrationTest {

	/** From so many findings on a difference of 0.15 is more than chance. */
	private static final int ENOUGH = 20;

	private record Row(String campus, String rule, int found, double expected, double precision) {
	}

	/** Prints the table. */
	public static void main(String[] args) {
		print(rows());
	}

	private static List<Row> rows() {
		Map<String, SimulatedArchive> campuses = new LinkedHashMap<>();
		campuses.put("Marrow Quay", MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED));
		campuses.put("3 sites, 6601", FaultyCampus.surveys(6601, CampusSize.of(3, 3, 140)));
		campuses.put("2 sites, 6602", FaultyCampus.surveys(6602, CampusSize.of(2, 4, 120)));
		campuses.put("4 sites, 6603", FaultyCampus.surveys(6603, CampusSize.of(4, 2, 190)));
		List<Row> rows = new ArrayList<>();
		campuses.forEach((name, archive) -> rows.addAll(rows(name, archive)));
		return rows;
	}

	private static List<Row> rows(String campus, SimulatedArchive archive) {
		SurveyedMap map = SimulatedSurveys.of(archive);
		RuleRun run = new RuleRun(CleaningRules.registry().all());
		RunResult result = run.over(map, Workers.inline());
		SelfTests tests = SelfTests.over(map, result, run, SelfTests.NONE, Workers.inline());
		Map<String, RuleScores.Score> scores = new RuleScores(archive, map, result).all();
		List<Row> rows = new ArrayList<>();
		for (Rule rule : CleaningRules.registry().all()) {
			double sum = 0;
			int named = 0;
			for (RuleResult each : result.results()) {
				Expectation expected = tests.of(each).orElse(null);
				if (each.rule().equals(rule.id()) && expected != null) {
					int count = each.outcome().findings().stream().mapToInt(finding -> finding.subjects().size()).sum();
					sum += count * expected.precision();
					named += count;
				}
			}
			if (named > 0) {
				rows.add(new Row(campus, rule.id(), scores.get(rule.id()).found(), sum / named,
						scores.get(rule.id()).precision()));
			}
		}
		return rows;
	}

	private static void print(List<Row> rows) {
		System.out.printf(Locale.ROOT, "%-22s %-16s %6s %9s %9s%n", "rule", "campus", "found", "expected", "precision");
		rows.stream().sorted((a, b) -> a.rule.compareTo(b.rule))
				.forEach(row -> System.out.printf(Locale.ROOT, "%-22s %-16s %6d %9.2f %9.2f%n",
						row.rule, row.campus, row.found, row.expected, row.precision));
	}

	@Test
	void theyExpectWhatTheyHave() {
		List<Row> rows = rows();
		print(rows);
		List<Row> counted = rows.stream().filter(row -> row.found >= ENOUGH).toList();
		assertTrue(counted.size() >= 9, () -> "only " + counted);
		for (Row row : counted) {
			assertEquals(row.precision, row.expected, 0.15, row::toString);
		}
	}
}
