package org.cairnfield.ui.internal.findings;

import java.util.List;

import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;

/**
 * One way to remedy the findings selected.
 *
 * @param title what it does; empty where there is one way only
 */
record RemedyChoice(String title, List<Remedy> remedies) {

	/** The ways to remedy findings: those of their rule where all are of one that has several. */
	static List<RemedyChoice> of(List<Finding> findings) {
		List<Finding> offering = findings.stream().filter(finding -> finding.remedy().isPresent()).toList();
		if (offering.isEmpty()) {
			return List.of();
		}
		boolean oneRule = offering.stream().map(Finding::rule).distinct().count() == 1;
		List<Alternative> ways = oneRule
				? offering.stream().flatMap(finding -> finding.alternatives().stream()).distinct().toList()
				: List.of();
		return ways.isEmpty() ? List.of(new RemedyChoice("", remedies(offering, "")))
				: ways.stream().map(way -> new RemedyChoice(way.title(), remedies(offering, way.name()))).toList();
	}

	private static List<Remedy> remedies(List<Finding> offering, String way) {
		return offering.stream().flatMap(finding -> finding.choosing(way).remedy().stream()).toList();
	}
}
