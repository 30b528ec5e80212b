package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.measured;
import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
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
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Doubles;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * Samples of one device at the same place and time that heard different things: few access points in common, or levels
 * apart by more than noise. The middle difference of two scans is about 3 dB at a noise of 3 dB each.
 */
public final class ContradictorySamplesRule extends DescribedRule {

	public static final Alternative BOTH = new Alternative("both", Messages.ContradictorySamplesRule_setAsideBoth);
	public static final Alternative KEEP_FIRST = new Alternative("keep-first",
			Messages.ContradictorySamplesRule_keepTheFirst);
	public static final Alternative KEEP_SECOND = new Alternative("keep-second",
			Messages.ContradictorySamplesRule_keepTheSecond);

	public static final Parameter SECONDS = Parameter.number("within-seconds",
			Messages.ContradictorySamplesRule_takenForTheSameTime, 1, 0, 60, "s",
			onCampuses(Messages.ContradictorySamplesRule_05And2Find));
	public static final Parameter APART = Parameter.number("apart-db",
			Messages.ContradictorySamplesRule_middleDifferenceOverAccessPoints, 8,
			3, 60, "dB", measured(Messages.ContradictorySamplesRule_aboveNoiseOf3Db));
	public static final Parameter OVERLAP = Parameter.share("least-overlap",
			Messages.ContradictorySamplesRule_shareOfAccessPointsThat, 0.3,
			onCampuses(Messages.ContradictorySamplesRule_015Finds075));

	private static final Threshold FEWEST = new Threshold(Messages.ContradictorySamplesRule_accessPointsThatBothMust, 3,
			judged(Messages.ContradictorySamplesRule_aMiddleOfFewerIs));

	public ContradictorySamplesRule() {
		super("contradictory-samples", Messages.ContradictorySamplesRule_samePlaceSameTimeOther,
				Messages.ContradictorySamplesRule_nobodyHearsTwoWorldsAt,
				Severity.ERROR, Topic.SAMPLE, RuleScope.SURVEY, SECONDS, APART, OVERLAP);
	}

	@Override
	public List<Alternative> alternatives() {
		return List.of(BOTH, KEEP_FIRST, KEEP_SECOND);
	}

	@Override
	protected List<Threshold> fixed() {
		return List.of(FEWEST);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Sequence sequence = Sequence.of(input);
		boolean timed = false;
		for (int t = 0; t < sequence.tracks(); t++) {
			timed |= sequence.isTimed(t);
		}
		if (!timed) {
			return RuleOutcome.notApplicable(Messages.ContradictorySamplesRule_samplesHaveNoTimes);
		}
		Spots spots = Spots.of(input);
		List<Finding> findings = new ArrayList<>();
		for (int spot = 0; spot < spots.size(); spot++) {
			int[] members = spots.members(spot).length < 2 ? new int[0] : inOrder(spots.members(spot), sequence);
			for (int i = 1; i < members.length; i++) {
				compare(input, settings, members[i - 1], members[i], findings);
			}
		}
		return RuleOutcome.found(findings);
	}

	private static int[] inOrder(int[] samples, Sequence sequence) {
		return Arrays.stream(samples).boxed()
				.sorted(Comparator.comparingInt(sequence::placeInTrack)).mapToInt(s -> s).toArray();
	}

	private void compare(RuleInput input, Settings settings, int a, int b, List<Finding> findings) {
		SurveyedMap map = input.map();
		RadioMap radio = map.map();
		if (radio.timeMillis(a) == RadioMap.NO_TIME || radio.timeMillis(b) == RadioMap.NO_TIME
				|| Math.abs(radio.timeMillis(b) - radio.timeMillis(a)) > 1000 * settings.of(SECONDS)
				|| radio.heard(a) < FEWEST.count() || radio.heard(b) < FEWEST.count()) {
			return;
		}
		Doubles differences = new Doubles();
		for (int k = radio.firstReading(a); k < radio.endReading(a); k++) {
			int other = radio.rssiDbm(b, radio.accessPoint(k), 1);
			if (other != 1) {
				differences.add(Math.abs(radio.rssiDbm(k) - other));
			}
		}
		int shared = differences.size();
		double overlap = (double) shared / (radio.heard(a) + radio.heard(b) - shared);
		double apart = shared < FEWEST.count() ? 0 : Median.of(differences.toArray());
		if (overlap >= settings.of(OVERLAP) && apart < settings.of(APART)) {
			return;
		}
		String message = String.format(Locale.ROOT,
				Messages.ContradictorySamplesRule_andStandAtAtThe,
				map.sampleId(a), map.sampleId(b), RuleWords.place(radio.x(a), radio.y(a)), shared,
				radio.heard(a) + radio.heard(b) - shared, apart);
		String reason = Messages.ContradictorySamplesRule_contradictedAtTheSamePlace;
		findings.add(Finding.of(this).message(message).about(map.subjects(a, b)).figure("overlap", overlap, "")
				.figure(Messages.ContradictorySamplesRule_levelsApart, apart, "dB")
				.remedy(BOTH, new Remedy.SetAsideSamples(map.ids(a, b), reason))
				.remedy(KEEP_FIRST, new Remedy.SetAsideSamples(map.ids(b), reason))
				.remedy(KEEP_SECOND, new Remedy.SetAsideSamples(map.ids(a), reason)).build());
	}
}
