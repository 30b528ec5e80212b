package org.cairnfield.curation.rules;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Precision and recall as a table: found rightly of those found, met of those planted. */
final class RuleScoreTable {

	private RuleScoreTable() {
	}

	/** Rules by rows, campuses by columns. */
	static String of(Map<String, RuleScores> campuses) {
		StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%-24s", "rule"));
		campuses.keySet().forEach(c -> text.append(String.format(Locale.ROOT, "| %-28s", c)));
		text.append(String.format(Locale.ROOT, "%n%-24s", ""));
		campuses.keySet().forEach(c -> text.append(String.format(Locale.ROOT, "| %-28s", "precision     recall")));
		text.append(String.format(Locale.ROOT, "%n"));
		Map<String, Map<String, RuleScores.Score>> scores = new LinkedHashMap<>();
		campuses.forEach((name, each) -> scores.put(name, each.all()));
		Set<String> rules = new TreeSet<>();
		scores.values().forEach(s -> rules.addAll(s.keySet()));
		for (String rule : rules) {
			text.append(String.format(Locale.ROOT, "%-24s", rule));
			for (Map<String, RuleScores.Score> each : scores.values()) {
				RuleScores.Score s = each.get(rule);
				text.append(String.format(Locale.ROOT, "| %4s %-9s %4s %-8s", share(s.precision()),
						"(" + s.right() + "/" + s.found() + ")", share(s.recall()),
						"(" + s.met() + "/" + s.planted() + ")"));
			}
			text.append(String.format(Locale.ROOT, "%n"));
		}
		return text.toString();
	}

	private static String share(double share) {
		return Double.isNaN(share) ? "-" : String.format(Locale.ROOT, "%.2f", share);
	}
}
