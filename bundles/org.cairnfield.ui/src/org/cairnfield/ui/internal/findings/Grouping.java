package org.cairnfield.ui.internal.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRegistry;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.cleaning.CleaningRules;

/** The ways to put findings into groups. */
enum Grouping {

	RULE(Messages.Grouping_byRule) {
		@Override
		Map<String, List<Finding>> groups(List<Finding> findings, Places places) {
			RuleRegistry rules = CleaningRules.registry();
			return group(new LinkedHashMap<>(), findings, finding -> rules.rule(finding.rule()).title());
		}
	},
	SEVERITY(Messages.Grouping_bySeverity) {
		@Override
		Map<String, List<Finding>> groups(List<Finding> findings, Places places) {
			return group(new LinkedHashMap<>(), findings, finding -> switch (finding.severity()) {
			case ERROR -> Messages.Grouping_errorsPositionsSuffer;
			case WARNING -> Messages.Grouping_warningsLikelyWrong;
			case NOTE -> Messages.Grouping_notesWorthKnowing;
			});
		}
	},
	FLOOR(Messages.Grouping_byFloor) {
		@Override
		Map<String, List<Finding>> groups(List<Finding> findings, Places places) {
			return group(new TreeMap<>(), findings, finding -> places.of(finding.subjects().get(0)));
		}
	};

	/** Tells the site and floor of what a finding is about. */
	interface Places {
		String of(Subject subject);
	}

	final String title;

	Grouping(String title) {
		this.title = title;
	}

	/** Groups by their headings, in the order of the findings or of the headings. */
	abstract Map<String, List<Finding>> groups(List<Finding> findings, Places places);

	private static Map<String, List<Finding>> group(Map<String, List<Finding>> groups, List<Finding> findings,
			Function<Finding, String> heading) {
		findings.forEach(
				finding -> groups.computeIfAbsent(heading.apply(finding), h -> new ArrayList<>()).add(finding));
		return groups;
	}
}
