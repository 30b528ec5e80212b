package org.cairnfield.ui.internal.properties.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.curation.rules.Figure;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.cleaning.CleaningRules;

/** What there is to know about a finding. */
public final class FindingProperties {

	private static final int MOST_NAMED = 5;
	private static final int DECIMALS = 3;

	private FindingProperties() {
	}

	/** The finding, then the figures that it rests on. */
	public static List<Property> of(Finding finding) {
		List<Property> all = new ArrayList<>();
		all.add(new Property("Rule", CleaningRules.registry().rule(finding.rule()).title(), ""));
		all.add(new Property("Severity", finding.severity().code(), ""));
		all.add(new Property("Right here (%)", finding.precision().isPresent() ? PropertyValues.number(100 * finding.precision().getAsDouble(), 0) : "",
				"Share of what the rule names on this part of the map that is expected to be faulty, tried out on faults planted in a copy."));
		all.add(new Property("Message", finding.message(), ""));
		all.add(new Property("About", names(finding.subjects()), "What the finding is about; a remedy changes it."));
		all.add(new Property("Compared with", names(finding.related()), "What else to look at."));
		all.add(new Property("Remedy", finding.remedy().map(Remedy::preview).orElse(""), ""));
		for (Figure figure : finding.evidence()) {
			all.add(new Property(figure.name() + (figure.unit().isEmpty() ? "" : " (" + figure.unit() + ")"), value(figure.value()), ""));
		}
		return all;
	}

	private static String value(double value) {
		return PropertyValues.number(value, value == Math.rint(value) ? 0 : DECIMALS);
	}

	private static String names(List<Subject> subjects) {
		String some = subjects.stream().limit(MOST_NAMED).map(Subject::label).collect(Collectors.joining(", "));
		return some + (subjects.size() > MOST_NAMED ? " and " + (subjects.size() - MOST_NAMED) + " more" : "");
	}
}
