package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
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
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.curation.internal.rules.evidence.SignalNeighbours;
import org.cairnfield.model.values.Count;

/** Samples that hear what another floor hears. A floor between takes some 14 dB (ITU-R P.1238, office, 2.4 GHz). */
public final class WrongFloorRule extends DescribedRule {

	/** The figure that grows with the fault; findings of planted faults are compared by it. */
	public static final String STRENGTH = Messages.WrongFloorRule_lessAlike;

	public static final Parameter LEAST = Parameter.count("least-votes", Messages.WrongFloorRule_of7NeighboursThatAgree,
			6, 4,
			7, onCampuses(Messages.WrongFloorRule_4GivesAPrecisionOf));
	public static final Parameter OWN = Parameter.count("most-own-votes", Messages.WrongFloorRule_ofThemOnTheSample, 1,
			0, 3,
			onCampuses(Messages.WrongFloorRule_2FindsTheSame0));

	public static final Parameter RATIO = Parameter.number("unlike",
			Messages.WrongFloorRule_howManyTimesLessAlike, 1.3, 1, 10, "",
			onCampuses(Messages.WrongFloorRule_1GivesAPrecisionOf));

	private static final Threshold GAP = new Threshold(Messages.WrongFloorRule_soundSamplesThatARun, 2,
			judged(Messages.WrongFloorRule_oneOrTwoStraysDo));
	private static final Threshold FEWEST_HEARD = new Threshold(Messages.WrongFloorRule_accessPointsThatASample, 5,
			judged(Messages.WrongFloorRule_fewerDoNotTellFloors));

	public WrongFloorRule() {
		super("wrong-floor", Messages.WrongFloorRule_floorContradictedByWhatWas,
				Messages.WrongFloorRule_aSampleOnTheWrong,
				Severity.ERROR, Topic.SAMPLE, RuleScope.SITE, LEAST, OWN, RATIO);
	}

	@Override
	public void prepare(RuleInput input, Workers workers) {
		SignalNeighbours.of(input, workers);
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(List.of(GAP, FEWEST_HEARD), FloorVotes.THRESHOLDS, Unlikeness.THRESHOLDS,
				SignalNeighbours.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		if (map.size() > 0 && IntStream.range(0, map.size()).map(map.map()::floor).distinct().count() < 2) {
			return RuleOutcome.notApplicable(Words.bind(Messages.WrongFloorRule_allSamplesOfAreOn, input.unit()));
		}
		FloorVotes votes = new FloorVotes(input, workers);
		Unlikeness unlikeness = new Unlikeness(input, votes.voters());
		List<Finding> findings = new ArrayList<>();
		for (int[] run : runs(input, votes, unlikeness, settings)) {
			findings.add(finding(map, votes, unlikeness, run));
		}
		return RuleOutcome.found(findings);
	}

	/** Runs of contradicted samples that are unlike those around the place noted. */
	static List<int[]> runs(RuleInput input, FloorVotes votes, Unlikeness unlikeness, Settings settings) {
		boolean[] contradicted = contradicted(input, votes, settings);
		List<int[]> runs = new ArrayList<>();
		for (int[] run : Sequence.of(input).runs(s -> contradicted[s],
				s -> input.map().map().floor(s) * 65_536 + votes.winner(s), GAP.count())) {
			if (unlike(unlikeness, run) >= settings.of(RATIO)) {
				runs.add(run);
			}
		}
		return runs;
	}

	private static double unlike(Unlikeness unlikeness, int[] run) {
		return Median.of(Arrays.stream(run).mapToDouble(unlikeness::of).toArray());
	}

	/** Those on which averaged spots, one a place, and plain samples agree. */
	private static boolean[] contradicted(RuleInput input, FloorVotes votes, Settings settings) {
		RadioMap map = input.map().map();
		boolean[] contradicted = new boolean[map.size()];
		PlainVotes plain = null;
		for (int s = 0; s < contradicted.length; s++) {
			if (map.heard(s) >= FEWEST_HEARD.count() && votes.winner(s) != map.floor(s)
					&& votes.forWinner(s) >= settings.countOf(LEAST)
					&& votes.forOwn(s) <= settings.countOf(OWN)) {
				plain = plain == null ? new PlainVotes(input, votes.voters()) : plain;
				contradicted[s] = plain.forFloor(s, votes.winner(s)) >= settings.countOf(LEAST);
			}
		}
		return contradicted;
	}

	private Finding finding(SurveyedMap map, FloorVotes votes, Unlikeness unlikeness, int[] run) {
		int away = 0;
		int cast = 0;
		for (int s : run) {
			away += votes.forWinner(s);
			cast += votes.cast(s);
		}
		int floor = votes.winner(run[0]);
		String survey = map.surveys().get(map.survey(run[0])).id();
		String message = String.format(Locale.ROOT,
				Messages.WrongFloorRule_ofNotedOnFloorWhat,
				Count.of(run.length, "sample"), survey, map.map().floor(run[0]), run.length == 1 ? "hears" : "hear",
				floor, away, cast, RuleWords.list(map.ids(run)));
		return Finding.of(this).message(message).about(map.subjects(run)).beside(List.of(new Subject.OfSurvey(survey)))
				.figure("samples", run.length, "")
				.figure(Words.bind(Messages.WrongFloorRule_votesForFloor, floor), away, "")
				.figure("votes", cast, "")
				.figure(STRENGTH, unlike(unlikeness, run), "")
				.remedy(new Remedy.SetFloor(map.ids(run), floor))
				.build();
	}
}
