package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.model.values.Count;

/** Samples that heard nothing, or too little to tell one place from another. */
public final class FewReadingsRule extends DescribedRule {

	public static final Parameter FEWEST = Parameter.count("fewest-readings",
			Messages.FewReadingsRule_accessPointsThatASample,
			3,
			1, 20,
			standard(
					Messages.FewReadingsRule_threeDistancesFixAPlace));
	public static final Parameter SPARSE = Parameter.share("sparse-survey",
			Messages.FewReadingsRule_shareOfSuchSamplesFrom, 0.1,
			onCampuses(Messages.FewReadingsRule_005And015));

	public FewReadingsRule() {
		super("few-readings", Messages.FewReadingsRule_samplesThatHeardNothingOr,
				Messages.FewReadingsRule_aSampleThatHearsOne,
				Severity.WARNING, Topic.SAMPLE, RuleScope.SURVEY, FEWEST, SPARSE);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		int fewest = settings.countOf(FEWEST);
		int[] empty = IntStream.range(0, map.size()).filter(s -> map.map().heard(s) == 0).toArray();
		int[] few = IntStream.range(0, map.size())
				.filter(s -> map.map().heard(s) > 0 && map.map().heard(s) < fewest).toArray();
		List<Finding> findings = new ArrayList<>();
		if (empty.length > 0) {
			findings.add(finding(input, empty, Messages.FewReadingsRule_heardNothing,
					Messages.FewReadingsRule_heardNothing));
		}
		boolean sparse = empty.length + few.length > settings.of(SPARSE) * map.size();
		if (few.length > 0 && !sparse) {
			findings.add(finding(input, few,
					Words.bind(Messages.FewReadingsRule_heardFewerThan,
							Count.of(fewest, Messages.FewReadingsRule_accessPoint)),
					Messages.FewReadingsRule_heardTooFewAccessPoints));
		}
		return RuleOutcome.found(findings);
	}

	private Finding finding(RuleInput input, int[] samples, String what, String reason) {
		String message = String.format(Locale.ROOT, Messages.FewReadingsRule_ofIn, Count.of(samples.length, "sample"),
				String.format(Locale.ROOT, "%,d", input.map().size()), input.unit(), what,
				RuleWords.list(input.map().ids(samples)));
		return Finding.of(this).message(message).about(input.map().subjects(samples))
				.beside(List.of(new Subject.OfSurvey(input.unit()))).figure("samples", samples.length, "")
				.remedy(new Remedy.SetAsideSamples(input.map().ids(samples), reason)).build();
	}
}
