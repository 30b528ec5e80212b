package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.standard;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
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
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.model.values.Count;

/**
 * Samples of one survey that agree in place, time, device and every reading. Without times a few levels agree
 * by chance, and copies in a row are left to {@link RepeatedScanRule}, as they may be scans handed out again.
 */
public final class ExactDuplicateRule extends DescribedRule {

	public static final Parameter FEWEST = Parameter.count("fewest-readings",
			Messages.ExactDuplicateRule_readingsThatMustAgreeWhere, 6,
			1, 100,
			standard(Messages.ExactDuplicateRule_noiseOf1DbLets));

	public ExactDuplicateRule() {
		super("exact-duplicate", Messages.ExactDuplicateRule_theSameSampleTwice,
				Messages.ExactDuplicateRule_aCopyAddsNoMeasurement, Severity.WARNING,
				Topic.SAMPLE, RuleScope.SURVEY, FEWEST);
	}

	private record Content(long measured, int device) {
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		Sequence sequence = Sequence.of(input);
		Map<Content, Integer> first = new HashMap<>();
		Ints copies = new Ints();
		Ints originals = new Ints();
		for (int s = 0; s < map.size(); s++) {
			boolean timed = map.map().timeMillis(s) != RadioMap.NO_TIME;
			if (map.map().heard(s) < (timed ? 1 : settings.countOf(FEWEST))
					|| !timed && RepeatedScanRule.isRepeat(map, sequence, s)) {
				continue;
			}
			Integer known = first.putIfAbsent(new Content(map.measuredKey(s), map.map().device(s)), s);
			if (known != null) {
				copies.add(s);
				originals.add(known);
			}
		}
		if (copies.size() == 0) {
			return RuleOutcome.found(List.of());
		}
		int[] samples = copies.toArray();
		String message = String.format(Locale.ROOT, Messages.ExactDuplicateRule_ofInPlaceTimeAnd,
				Count.of(samples.length, "sample"), String.format(Locale.ROOT, "%,d", map.size()), input.unit(),
				samples.length == 1 ? "has" : "have", RuleWords.list(map.ids(samples)));
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit()))
				.about(map.subjects(samples)).beside(map.subjects(originals.toArray()))
				.figure("copies", samples.length, "")
				.remedy(new Remedy.SetAsideSamples(map.ids(samples), Messages.ExactDuplicateRule_copyOfAnotherSample))
				.build()));
	}
}
