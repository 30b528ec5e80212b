package org.cairnfield.ui.internal.findings;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Function;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.ui.internal.tables.NaturalOrder;

/** What the list of findings tells of each, and how it is sorted by that. */
enum FindingColumn {

	FINDING(Messages.FindingsView_finding, 480, Finding::message, byWords(Finding::message)),
	SEVERITY(Messages.FindingsView_severity, 80, finding -> FindingDetails.word(finding.severity()),
			Comparator.comparing(Finding::severity)),
	/** Those that nobody can tell come last. */
	RIGHT_HERE(Messages.FindingsView_rightHere, 80, finding -> finding.precision().isPresent()
			? String.format(Locale.ROOT, "%.0f %%", 100 * finding.precision().getAsDouble())
			: "", Comparator.comparingDouble((Finding finding) -> -finding.precision().orElse(-1))),
	REMEDY(Messages.FindingsView_remedy, 220, FindingColumn::remedy, byWords(FindingColumn::remedy));

	final String title;
	final int width;
	final Function<Finding, String> text;
	final Comparator<Finding> order;

	FindingColumn(String title, int width, Function<Finding, String> text, Comparator<Finding> order) {
		this.title = title;
		this.width = width;
		this.text = text;
		this.order = order;
	}

	private static String remedy(Finding finding) {
		return finding.remedy().map(remedy -> remedy.preview()).orElse("–");
	}

	private static Comparator<Finding> byWords(Function<Finding, String> words) {
		return Comparator.comparing(words, new NaturalOrder());
	}
}
