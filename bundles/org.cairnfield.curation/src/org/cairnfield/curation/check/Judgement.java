package org.cairnfield.curation.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleResult;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.internal.selftest.Expectation;
import org.cairnfield.curation.internal.selftest.SelfTests;

/** Severity and remedy of findings, by the precision that the rule is to be expected to have where it found them. */
public final class Judgement {

	/** An error holds a release back, so four of five must be right. */
	private static final double TRUSTED = 0.8;
	/** Below, a remedy would spoil more sound samples than it mends. */
	private static final double AS_OFTEN_AS_NOT = 0.5;

	private Judgement() {
	}

	/** All findings of a result. */
	public static List<Finding> of(RunResult result, SelfTests tests, RuleRun rules) {
		List<Finding> judged = new ArrayList<>();
		for (RuleResult each : result.results()) {
			Optional<Expectation> expected = tests.of(each);
			for (Finding finding : each.outcome().findings()) {
				// what a rule itself says more mildly is not what it was tried out for
				boolean usual = finding.severity() == rules.rule(each.rule()).severity();
				judged.add(usual && expected.isPresent() ? judge(finding, expected.get().precision()) : finding);
			}
		}
		return judged;
	}

	/** How far a finding can be trusted, for a person; empty where that is not known. */
	public static String words(Finding finding) {
		if (finding.precision().isEmpty()) {
			return "";
		}
		double precision = finding.precision().getAsDouble();
		String share = String.format(Locale.ROOT,
				Messages.Judgement_ofWhatThisRuleNames,
				100 * precision);
		return precision >= TRUSTED ? share
				: precision < AS_OFTEN_AS_NOT ? Words.bind(Messages.Judgement_soNoRemedyIsOffered, share)
						: finding.remedy().isPresent() ? Words.bind(Messages.Judgement_lookBeforeYouApplyThe, share)
								: share;
	}

	static Finding judge(Finding finding, double precision) {
		boolean believed = precision >= AS_OFTEN_AS_NOT;
		Severity most = precision >= TRUSTED ? Severity.ERROR : believed ? Severity.WARNING : Severity.NOTE;
		Severity severity = finding.severity().compareTo(most) < 0 ? most : finding.severity();
		return finding.judged(severity, believed, OptionalDouble.of(precision));
	}
}
