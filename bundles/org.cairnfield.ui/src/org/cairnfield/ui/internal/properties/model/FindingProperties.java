package org.cairnfield.ui.internal.properties.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.curation.rules.Figure;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.eclipse.osgi.util.NLS;

/** What there is to know about a finding. */
public final class FindingProperties {

	private static final int MOST_NAMED = 5;
	private static final int DECIMALS = 3;

	private FindingProperties() {
	}

	/** The finding, then the figures that it rests on. */
	public static List<Property> of(Finding finding) {
		List<Property> all = new ArrayList<>();
		all.add(new Property(Messages.FindingProperties_rule, CleaningRules.registry().rule(finding.rule()).title(),
				""));
		all.add(new Property(Messages.FindingProperties_severity, finding.severity().code(), ""));
		all.add(new Property(Messages.FindingProperties_rightHere,
				finding.precision().isPresent() ? PropertyValues.number(100 * finding.precision().getAsDouble(), 0)
						: "",
				Messages.FindingProperties_shareOfWhatTheRule));
		all.add(new Property(Messages.FindingProperties_message, finding.message(), ""));
		all.add(new Property(Messages.FindingProperties_about, names(finding.subjects()),
				Messages.FindingProperties_whatTheFindingIsAbout));
		all.add(new Property(Messages.FindingProperties_comparedWith, names(finding.related()),
				Messages.FindingProperties_whatElseToLookAt));
		all.add(new Property(Messages.FindingProperties_remedy, finding.remedy().map(Remedy::preview).orElse(""), ""));
		for (Figure figure : finding.evidence()) {
			all.add(new Property(figure.name() + (figure.unit().isEmpty() ? "" : " (" + figure.unit() + ")"),
					value(figure.value()), ""));
		}
		return all;
	}

	private static String value(double value) {
		return PropertyValues.number(value, value == Math.rint(value) ? 0 : DECIMALS);
	}

	private static String names(List<Subject> subjects) {
		String some = subjects.stream().limit(MOST_NAMED).map(Subject::label).collect(Collectors.joining(", "));
		return some + (subjects.size() > MOST_NAMED
				? NLS.bind(Messages.FindingProperties_andMore, subjects.size() - MOST_NAMED)
				: "");
	}
}
