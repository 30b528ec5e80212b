package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.cairnfield.curation.internal.rules.evidence.Doubles;
import org.cairnfield.curation.internal.rules.evidence.SignalNeighbours;
import org.cairnfield.curation.internal.rules.evidence.Spots;
import org.cairnfield.model.values.Count;

/**
 * Samples whose neighbours in signal space agree on a place far from the one noted, while those around the place noted
 * hear something else. How far is far follows from the site: neighbours lie within a few metres where many access
 * points are heard, and farther where few are. What {@link SwappedAxesRule} and {@link WrongFloorRule} explain is left
 * to them.
 */
public final class WrongPlaceRule extends DescribedRule {

	/** The figure that grows with the fault; findings of planted faults are compared by it. */
	public static final String STRENGTH = Messages.WrongPlaceRule_lessAlike;

	public static final Parameter LEAST = Parameter.number("least-metres",
			Messages.WrongPlaceRule_distanceToItsNeighboursAt, 10,
			1, 500,
			"m", onCampuses(Messages.WrongPlaceRule_5FindsTheSame20));
	public static final Parameter TIMES = Parameter.number("times-usual", Messages.WrongPlaceRule_timesTheSiteSUsual,
			2.5, 1,
			50, "", onCampuses(Messages.WrongPlaceRule_125FindsTheSame));
	public static final Parameter RATIO = Parameter.number("unlike",
			Messages.WrongPlaceRule_howManyTimesLessAlike,
			1.5, 1, 10, "", onCampuses(Messages.WrongPlaceRule_1GivesAPrecisionOf));

	private static final Threshold FEWEST_HEARD = new Threshold(Messages.WrongPlaceRule_accessPointsThatASample, 5,
			judged(Messages.WrongPlaceRule_fewerDoNotTellPlaces));
	private static final Threshold GAP = new Threshold(Messages.WrongPlaceRule_soundSamplesThatARun, 1,
			judged(Messages.WrongPlaceRule_oneStrayDoesNotEnd));
	private static final Threshold SUPPORT_METRES = new Threshold(Messages.WrongPlaceRule_aNeighbourSoNearSpeaks, 3,
			"m",
			judged(Messages.WrongPlaceRule_aboutTheDistanceBetweenPlaces));
	private static final Threshold VOTERS = new Threshold(Messages.WrongPlaceRule_neighboursInSignalSpaceThat, 5,
			judged(Messages.WrongPlaceRule_fewEnoughToBeNear));
	private static final Threshold FEWEST_VOTERS = new Threshold(Messages.WrongPlaceRule_ofThemAtLeast, 4,
			judged(Messages.WrongPlaceRule_aMajorityOfFiveAnd));

	public WrongPlaceRule() {
		super("wrong-place", Messages.WrongPlaceRule_placeContradictedByWhatWas,
				Messages.WrongPlaceRule_aSampleNotedAtThe, Severity.ERROR,
				Topic.SAMPLE, RuleScope.SITE, LEAST, TIMES, RATIO);
	}

	@Override
	public void prepare(RuleInput input, Workers workers) {
		SignalNeighbours.of(input, workers);
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(List.of(FEWEST_HEARD, GAP, SUPPORT_METRES, VOTERS, FEWEST_VOTERS), SwappedAxes.THRESHOLDS,
				FloorVotes.THRESHOLDS, Unlikeness.THRESHOLDS, SignalNeighbours.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		RadioMap map = input.map().map();
		boolean[] explained = explained(input, workers);
		Voters voters = new Voters(input, workers);
		voters.suspect(explained);
		double[] metres = new double[map.size()];
		double[] spread = new double[map.size()];
		measure(map, voters, metres, spread);
		Doubles all = new Doubles();
		for (int s = 0; s < metres.length; s++) {
			if (!Double.isNaN(metres[s]) && !explained[s]) {
				all.add(metres[s]);
			}
		}
		if (all.size() == 0) {
			return RuleOutcome.notApplicable(Words.bind(Messages.WrongPlaceRule_noSampleOfHasEnough, input.unit()));
		}
		double usual = Median.of(all.toArray());
		double limit = Math.max(settings.of(LEAST), settings.of(TIMES) * usual);
		Unlikeness unlikeness = new Unlikeness(input, voters);
		double[] ratio = new double[map.size()];
		for (int s = 0; s < metres.length; s++) {
			boolean far = !explained[s] && map.heard(s) >= FEWEST_HEARD.count() && metres[s] >= limit
					&& metres[s] >= 2 * spread[s]
					&& voters.nearestMetres(s) > Math.max(SUPPORT_METRES.value(), usual);
			ratio[s] = far ? unlikeness.of(s) : 0;
		}
		List<Finding> findings = new ArrayList<>();
		for (int[] group : groups(input, voters, ratio, settings.of(RATIO))) {
			findings.add(finding(input.map(), group, metres, spread, usual, ratio));
		}
		return RuleOutcome.found(findings);
	}

	/** Those recorded one after the other, and those of one spot, together. */
	private static Collection<int[]> groups(RuleInput input, Voters voters, double[] ratio, double least) {
		Spots spots = Spots.of(input);
		Map<Integer, int[]> groups = new LinkedHashMap<>();
		for (int[] run : voters.sequence().runs(s -> ratio[s] >= least, input.map().map()::floor, GAP.count())) {
			boolean oneSpot = Arrays.stream(run).map(spots::spotOf).distinct().count() == 1;
			groups.merge(oneSpot ? spots.spotOf(run[0]) : -1 - run[0], run,
					(a, c) -> IntStream.concat(Arrays.stream(a), Arrays.stream(c)).toArray());
		}
		return groups.values();
	}

	private static boolean[] explained(RuleInput input, Workers workers) {
		boolean[] explained = new boolean[input.map().size()];
		for (SwappedAxes.Group group : new SwappedAxes(input, SwappedAxesRule.GAIN.usual(),
				(int) SwappedAxesRule.FEWEST.usual(), workers).groups()) {
			for (int s : group.samples()) {
				explained[s] = true;
			}
		}
		FloorVotes votes = new FloorVotes(input, workers);
		for (int[] run : WrongFloorRule.runs(input, votes, new Unlikeness(input, votes.voters()), Settings.USUAL)) {
			for (int s : run) {
				explained[s] = true;
			}
		}
		return explained;
	}

	/** Metres to the neighbours, and how far these lie from their own middle; NaN for too few on the floor. */
	private static void measure(RadioMap map, Voters voters, double[] metres, double[] spread) {
		int[] who = new int[VOTERS.count()];
		double[] scratch = new double[VOTERS.count()];
		double[] xs = new double[VOTERS.count()];
		double[] ys = new double[VOTERS.count()];
		for (int s = 0; s < metres.length; s++) {
			int count = voters.of(s, who);
			if (count < FEWEST_VOTERS.count()) {
				metres[s] = Double.NaN;
				continue;
			}
			metres[s] = voters.medianMetres(map.x(s), map.y(s), who, count, scratch);
			for (int i = 0; i < count; i++) {
				xs[i] = voters.spotMap().x(who[i]);
				ys[i] = voters.spotMap().y(who[i]);
			}
			double middleX = Median.ofFirst(xs, count);
			double middleY = Median.ofFirst(ys, count);
			spread[s] = voters.medianMetres(middleX, middleY, who, count, scratch);
		}
	}

	private Finding finding(SurveyedMap map, int[] run, double[] metres, double[] spread, double usual,
			double[] ratio) {
		String survey = map.surveys().get(map.survey(run[0])).id();
		double far = Median.of(pick(metres, run));
		double unlike = Median.of(pick(ratio, run));
		String where = run.length == 1
				? Words.bind(Messages.WrongPlaceRule_ofIsNotedAt, map.sampleId(run[0]), survey,
						RuleWords.place(map.map().x(run[0]), map.map().y(run[0])))
				: Words.bind(Messages.WrongPlaceRule_ofToAreNoted, Count.of(run.length, "sample"), survey,
						map.sampleId(run[0]), map.sampleId(run[run.length - 1]));
		String message = String.format(Locale.ROOT,
				Messages.WrongPlaceRule_onFloorTheSamplesThat,
				where, map.map().floor(run[0]), RuleWords.metres(far), RuleWords.metres(usual), unlike);
		return Finding.of(this).message(message).about(map.subjects(run)).beside(List.of(new Subject.OfSurvey(survey)))
				.figure("samples", run.length, "").figure(Messages.WrongPlaceRule_distanceToNeighbours, far, "m")
				.figure(Messages.WrongPlaceRule_spreadOfNeighbours, Median.of(pick(spread, run)), "m")
				.figure(Messages.WrongPlaceRule_usualDistance, usual, "m")
				.figure(STRENGTH, unlike, "")
				.remedy(new Remedy.SetAsideSamples(map.ids(run), Messages.WrongPlaceRule_placeContradictedByWhatWas2))
				.build();
	}

	private static double[] pick(double[] values, int[] samples) {
		return Arrays.stream(samples).mapToDouble(s -> values[s]).toArray();
	}
}
