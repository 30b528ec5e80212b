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

	public static final Parameter LEAST = Parameter.number("least-metres", "distance to its neighbours, at least", 10,
			1, 500,
			"m", onCampuses("5 finds the same, 20 finds 0.61 of them instead of 0.80"));
	public static final Parameter TIMES = Parameter.number("times-usual", "times the site's usual distance, at least",
			2.5, 1,
			50, "", onCampuses("1.25 finds the same, 5 finds 0.57 instead of 0.80"));
	public static final Parameter RATIO = Parameter.number("unlike",
			"how many times less alike those around the place are",
			1.5, 1, 10, "", onCampuses("1 gives a precision of 0.93, 1.5 of 0.96, 3 finds 0.24 instead of 0.80"));

	private static final Threshold FEWEST_HEARD = new Threshold("access points that a sample must hear", 5,
			judged("fewer do not tell places apart"));
	private static final Threshold GAP = new Threshold("sound samples that a run may hold", 1,
			judged("one stray does not end a run"));
	private static final Threshold SUPPORT_METRES = new Threshold("a neighbour so near speaks for the place", 3, "m",
			judged("about the distance between places of a survey"));
	private static final Threshold VOTERS = new Threshold("neighbours in signal space that are asked", 5,
			judged("few enough to be near, enough for a middle"));
	private static final Threshold FEWEST_VOTERS = new Threshold("of them at least", 4,
			judged("a majority of five, and one to spare"));

	public WrongPlaceRule() {
		super("wrong-place", "Place contradicted by what was heard",
				"A sample noted at the wrong place sends every device there that hears what it hears.", Severity.ERROR,
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
			return RuleOutcome.notApplicable("no sample of " + input.unit() + " has enough neighbours in signal space");
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
				? map.sampleId(run[0]) + " of " + survey + " is noted at "
						+ RuleWords.place(map.map().x(run[0]), map.map().y(run[0]))
				: Count.of(run.length, "sample") + " of " + survey + ", " + map.sampleId(run[0]) + " to "
						+ map.sampleId(run[run.length - 1]) + ", are noted";
		String message = String.format(Locale.ROOT,
				"%s on floor %d; the samples that hear most alike lie %s away (usual here: %s), and those around are %.1f"
						+ " times less alike.",
				where, map.map().floor(run[0]), RuleWords.metres(far), RuleWords.metres(usual), unlike);
		return Finding.of(this).message(message).about(map.subjects(run)).beside(List.of(new Subject.OfSurvey(survey)))
				.figure("samples", run.length, "").figure("distance to neighbours", far, "m")
				.figure("spread of neighbours", Median.of(pick(spread, run)), "m").figure("usual distance", usual, "m")
				.figure("less alike", unlike, "")
				.remedy(new Remedy.SetAsideSamples(map.ids(run), "place contradicted by what was heard")).build();
	}

	private static double[] pick(double[] values, int[] samples) {
		return Arrays.stream(samples).mapToDouble(s -> values[s]).toArray();
	}
}
