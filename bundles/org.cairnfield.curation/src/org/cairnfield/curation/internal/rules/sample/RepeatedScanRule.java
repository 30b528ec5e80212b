package org.cairnfield.curation.internal.rules.sample;

import java.util.List;
import java.util.Locale;
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
 * Samples with exactly the readings of the one recorded just before by the same device. Noise of 1 dB lets
 * six levels agree by chance once in two thousand pairs, of 3 dB once in two million; a device that hands out its last
 * scan again does it every time. Copies that agree in time and place as well are left to {@link ExactDuplicateRule}.
 */
public final class RepeatedScanRule extends DescribedRule {

	public static final Parameter FEWEST = Parameter.count("fewest-readings", "readings that must agree", 6, 1, 100);

	public RepeatedScanRule() {
		super("repeated-scan", "The scan before once more",
				"A device that hands out its last scan again measures nothing new: repeats feign certainty, and while walking"
						+ " they stand at the wrong place.",
				Severity.WARNING, Topic.SAMPLE, RuleScope.SURVEY, FEWEST);
	}

	/** Whether a sample only repeats the one before it in its track. */
	static boolean isRepeat(SurveyedMap map, Sequence sequence, int sample) {
		int at = sequence.placeInTrack(sample);
		if (at == 0) {
			return false;
		}
		int before = sequence.track(sequence.trackOf(sample))[at - 1];
		return map.readingsKey(before) == map.readingsKey(sample)
				&& (map.map().timeMillis(sample) == RadioMap.NO_TIME || map.measuredKey(before) != map.measuredKey(sample));
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		Sequence sequence = Sequence.of(input);
		Ints repeats = new Ints();
		int elsewhere = 0;
		for (int s = 0; s < map.size(); s++) {
			if (map.map().heard(s) >= settings.countOf(FEWEST) && isRepeat(map, sequence, s)) {
				repeats.add(s);
				int before = sequence.track(sequence.trackOf(s))[sequence.placeInTrack(s) - 1];
				elsewhere += map.map().metresApart(s, before) > 0 ? 1 : 0;
			}
		}
		if (repeats.size() == 0) {
			return RuleOutcome.found(List.of());
		}
		int[] samples = repeats.toArray();
		String message = String.format(Locale.ROOT,
				"%s of %s in %s (%s) hold exactly the readings of the sample before, %s of them at another place.",
				Count.of(samples.length, "sample"), String.format(Locale.ROOT, "%,d", map.size()), input.unit(),
				RuleWords.percent((double) samples.length / map.size()), String.format(Locale.ROOT, "%,d", elsewhere));
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit()))
				.beside(map.subjects(samples)).figure("repeats", samples.length, "")
				.figure("at another place", elsewhere, "").figure("share", (double) samples.length / map.size(), "")
				.remedy(new Remedy.SetAsideSamples(map.ids(samples), "repeats the scan before")).build()));
	}
}
