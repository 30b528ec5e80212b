package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
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
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.model.values.Count;

/**
 * A survey taken in twice, wholly or in part: samples of two surveys that agree in place, time and every reading, in
 * whatever order and under whatever ids. Of the two the one that comes later in the archive is the copy.
 */
public final class DuplicateSurveyRule extends DescribedRule {

	public static final Parameter SHARE = Parameter.share("least-share",
			Messages.DuplicateSurveyRule_ofTheSmallerSurveyFrom,
			0.1, onCampuses(Messages.DuplicateSurveyRule_005And015));
	public static final Parameter FEWEST = Parameter.count("fewest-samples",
			Messages.DuplicateSurveyRule_samplesThatBothHold, 5, 1, 100_000,
			onCampuses(Messages.DuplicateSurveyRule_2And10FindThe));

	public DuplicateSurveyRule() {
		super("duplicate-survey", Messages.DuplicateSurveyRule_aSurveyTakenInTwice,
				Messages.DuplicateSurveyRule_everySampleThenFindsIts,
				Severity.ERROR, Topic.SAMPLE, RuleScope.ARCHIVE, SHARE, FEWEST);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		int[] sizes = new int[map.surveys().size()];
		for (int s = 0; s < map.size(); s++) {
			sizes[map.survey(s)] += map.map().heard(s) == 0 ? 0 : 1;
		}
		Map<Long, Map<Integer, Ints>> groups = occurringTwice(map);
		Map<Long, Ints> shared = new TreeMap<>();
		for (Map<Integer, Ints> group : groups.values()) {
			List<Integer> surveys = new ArrayList<>(group.keySet());
			for (int a = 0; a < surveys.size(); a++) {
				for (int b = a + 1; b < surveys.size(); b++) {
					Ints pairs = shared.computeIfAbsent((long) surveys.get(a) << 32 | surveys.get(b), k -> new Ints());
					int twins = Math.min(group.get(surveys.get(a)).size(), group.get(surveys.get(b)).size());
					for (int i = 0; i < twins; i++) {
						pairs.add(group.get(surveys.get(b)).get(i));
					}
				}
			}
		}
		List<Finding> findings = new ArrayList<>();
		shared.forEach((pair, samples) -> {
			int a = (int) (pair >> 32);
			int b = pair.intValue();
			int smaller = Math.min(sizes[a], sizes[b]);
			if (samples.size() >= settings.countOf(FEWEST) && samples.size() >= settings.of(SHARE) * smaller) {
				findings.add(finding(map, a, b, samples.toArray(), sizes));
			}
		});
		return RuleOutcome.found(findings);
	}

	/** By content, then survey, the samples; only contents that occur more than once. */
	private static Map<Long, Map<Integer, Ints>> occurringTwice(SurveyedMap map) {
		long[] keys = new long[map.size()];
		for (int s = 0; s < keys.length; s++) {
			keys[s] = map.map().heard(s) == 0 ? 0 : map.measuredKey(s);
		}
		long[] sorted = keys.clone();
		Arrays.sort(sorted);
		Map<Long, Map<Integer, Ints>> groups = new HashMap<>();
		for (int s = 0; s < keys.length; s++) {
			int at = keys[s] == 0 ? -1 : Arrays.binarySearch(sorted, keys[s]);
			if (at >= 0
					&& (at > 0 && sorted[at - 1] == keys[s] || at + 1 < sorted.length && sorted[at + 1] == keys[s])) {
				groups.computeIfAbsent(keys[s], k -> new TreeMap<>())
						.computeIfAbsent(map.survey(s), k -> new Ints()).add(s);
			}
		}
		return groups;
	}

	private Finding finding(SurveyedMap map, int a, int b, int[] twins, int[] sizes) {
		String first = map.surveys().get(a).id();
		String later = map.surveys().get(b).id();
		boolean whole = twins.length == sizes[b];
		boolean sameSource = map.surveys().get(a).sourceDigest().isPresent()
				&& map.surveys().get(a).sourceDigest().equals(map.surveys().get(b).sourceDigest());
		Arrays.sort(twins);
		String message = String.format(Locale.ROOT, Messages.DuplicateSurveyRule_ofInAgreeWithSamples,
				Count.of(twins.length, "sample"), String.format(Locale.ROOT, "%,d", sizes[b]), later,
				first, sameSource ? Messages.DuplicateSurveyRule_bothCameFromTheSame : "");
		Remedy remedy = whole
				? new Remedy.SetAsideSurvey(later, Words.bind(Messages.DuplicateSurveyRule_copyOf, first))
				: new Remedy.SetAsideSamples(map.ids(twins),
						Words.bind(Messages.DuplicateSurveyRule_copyOfASampleOf, first));
		return Finding.of(this).message(message).about(new Subject.OfSurvey(later), new Subject.OfSurvey(first))
				.beside(map.subjects(twins)).figure("samples", twins.length, "")
				.figure(Messages.DuplicateSurveyRule_shareOfTheLater, (double) twins.length / sizes[b], "")
				.remedy(remedy).build();
	}
}
