package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.standard;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.Alternative;
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
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.curation.internal.rules.evidence.Spots;
import org.cairnfield.model.values.Count;

/**
 * Samples with exactly the readings of the one recorded just before by the same device. Noise of 1 dB lets
 * six levels agree by chance once in two thousand pairs, of 3 dB once in two million; a device that hands out its last
 * scan again does it every time. Copies that agree in time and place as well are left to {@link ExactDuplicateRule}.
 */
public final class RepeatedScanRule extends DescribedRule {

	public static final Alternative KEEP_FIRST = new Alternative("keep-first",
			Messages.RepeatedScanRule_keepTheFirstOfEach);
	public static final Alternative ONE_A_PLACE = new Alternative("one-a-place",
			Messages.RepeatedScanRule_keepOneOfEachRun);
	public static final Alternative AVERAGE = new Alternative("average",
			Messages.RepeatedScanRule_averageTheScansOfEach);

	public static final Parameter FEWEST = Parameter.count("fewest-readings",
			Messages.RepeatedScanRule_readingsThatMustAgree, 6, 1, 100,
			standard(Messages.RepeatedScanRule_noiseOf1DbLets));

	public RepeatedScanRule() {
		super("repeated-scan", Messages.RepeatedScanRule_repeatedScans,
				Messages.RepeatedScanRule_aDeviceThatHandsOut,
				Severity.WARNING, Topic.SAMPLE, RuleScope.SURVEY, FEWEST);
	}

	@Override
	public List<Alternative> alternatives() {
		return List.of(KEEP_FIRST, ONE_A_PLACE, AVERAGE);
	}

	/** Whether a sample only repeats the one before it in its track. */
	static boolean isRepeat(SurveyedMap map, Sequence sequence, int sample) {
		int at = sequence.placeInTrack(sample);
		if (at == 0) {
			return false;
		}
		int before = sequence.track(sequence.trackOf(sample))[at - 1];
		return map.readingsKey(before) == map.readingsKey(sample)
				&& (map.map().timeMillis(sample) == RadioMap.NO_TIME
						|| map.measuredKey(before) != map.measuredKey(sample));
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		Sequence sequence = Sequence.of(input);
		int[] samples = IntStream.range(0, map.size())
				.filter(s -> map.map().heard(s) >= settings.countOf(FEWEST) && isRepeat(map, sequence, s)).toArray();
		if (samples.length == 0) {
			return RuleOutcome.found(List.of());
		}
		long elsewhere = Arrays.stream(samples).filter(s -> map.map().metresApart(s, before(sequence, s)) > 0).count();
		String message = String.format(Locale.ROOT,
				Messages.RepeatedScanRule_ofInHoldExactlyThe,
				Count.of(samples.length, "sample"), String.format(Locale.ROOT, "%,d", map.size()), input.unit(),
				RuleWords.percent((double) samples.length / map.size()), String.format(Locale.ROOT, "%,d", elsewhere));
		String reason = Messages.RepeatedScanRule_repeatsTheScanBefore;
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit()))
				.beside(map.subjects(samples)).figure("repeats", samples.length, "")
				.figure(Messages.RepeatedScanRule_atAnotherPlace, elsewhere, "")
				.figure("share", (double) samples.length / map.size(), "")
				.remedy(KEEP_FIRST, new Remedy.SetAsideSamples(map.ids(samples), reason))
				.remedy(ONE_A_PLACE, new Remedy.SetAsideSamples(map.ids(again(input, sequence, samples)), reason))
				.remedy(AVERAGE,
						new Remedy.AverageSamples(places(input, samples),
								Messages.RepeatedScanRule_onePlaceScannedAgainAnd))
				.build()));
	}

	private static int before(Sequence sequence, int sample) {
		return sequence.track(sequence.trackOf(sample))[sequence.placeInTrack(sample) - 1];
	}

	/** Repeats at a place where their run has been before. */
	private static int[] again(RuleInput input, Sequence sequence, int[] repeats) {
		Spots spots = Spots.of(input);
		Set<Integer> all = Arrays.stream(repeats).boxed().collect(Collectors.toSet());
		return Arrays.stream(repeats).filter(s -> {
			int at = s;
			while (all.contains(at)) {
				at = before(sequence, at);
				if (spots.spotOf(at) == spots.spotOf(s)) {
					return true;
				}
			}
			return false;
		}).toArray();
	}

	/** All samples of each place with a repeat, where there are several. */
	private static List<List<String>> places(RuleInput input, int[] repeats) {
		Spots spots = Spots.of(input);
		return Arrays.stream(repeats).map(spots::spotOf).distinct().sorted().mapToObj(spots::members)
				.filter(members -> members.length > 1).map(input.map()::ids).toList();
	}
}
