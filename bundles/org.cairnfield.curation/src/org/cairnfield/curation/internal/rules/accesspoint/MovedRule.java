package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.KolmogorovSmirnov;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
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
import org.cairnfield.curation.internal.rules.evidence.Epochs;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * Access points that hang elsewhere than in the campaign before. Two things must come together: at the places surveyed
 * both times its levels changed by more than those of the site's access points do (two-sample test of Kolmogorov and
 * Smirnov on the absolute differences, its level divided by how many access points are tested), and where it is
 * loudest lies elsewhere.
 * <p>
 * No remedy is offered. On five simulated campuses neither leaving out the readings from before the move nor setting
 * the access point aside made a position better; the former made one campus 0.03 m of 3.21 m worse, since its old
 * samples then seem not to hear what stands near them now.
 */
public final class MovedRule extends DescribedRule {

	public static final Parameter ALPHA = Parameter.number("alpha", "level of the test, over all access points of a site",
			0.001, 1e-9, 0.2, "",
			standard("one site in a thousand has an access point named by chance; half and double find the same on simulated campuses"));
	public static final Parameter CHANGE = Parameter.number("change-db", "middle change of level at the same places", 7, 1, 40,
			"dB", onCampuses("3.5 and 14 find the same"));
	public static final Parameter TIMES = Parameter.number("times-usual", "times the change of the site's access points", 1.5,
			1, 10, "", onCampuses("1 and 3 find the same"));
	public static final Parameter METRES = Parameter.number("moved-metres", "how far its loudest place has moved", 8, 1, 500,
			"m", onCampuses("4 and 16 find the same"));

	private static final Threshold FEWEST_PLACES = new Threshold("places surveyed both times that heard it", 8,
			judged("fewer differences tell little"));
	private static final Threshold FEWEST_PAIRS = new Threshold("places surveyed both times", 20, judged("fewer do not show what is usual"));
	private static final Threshold FEWEST_LOUD = new Threshold("loud places", 3, judged("one misplaced sample must not decide"));
	private static final Threshold WITHIN_DB = new Threshold("below its loudest level, and still where it hangs", 12, "dB",
			judged("some four times the distance in free space"));

	public MovedRule() {
		super("moved-access-point", "An access point that was moved",
				"Samples from before the move contradict those from after it. Survey again where it was and where it is now, and"
						+ " set the old samples aside then; to leave out its old readings alone helps nobody.",
				Severity.WARNING, Topic.ACCESS_POINT, RuleScope.SITE, ALPHA, CHANGE, TIMES, METRES);
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(List.of(FEWEST_PLACES, FEWEST_PAIRS, FEWEST_LOUD, WITHIN_DB), SeasonPair.THRESHOLDS, Walking.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Epochs epochs = Epochs.of(input);
		if (epochs.all().size() < 2) {
			return RuleOutcome.notApplicable(input.unit() + " has no surveys of two dates weeks apart");
		}
		List<Finding> findings = new ArrayList<>();
		int places = 0;
		for (int later = 1; later < epochs.all().size(); later++) {
			SeasonPair pair = SeasonPair.of(input, later);
			places = Math.max(places, pair.size());
			if (pair.size() >= FEWEST_PAIRS.count()) {
				compare(input, settings, pair, epochs, later, findings);
			}
		}
		return places < FEWEST_PAIRS.count()
				? RuleOutcome.notApplicable("hardly a place of " + input.unit() + " was surveyed at two dates")
				: RuleOutcome.found(findings);
	}

	private void compare(RuleInput input, Settings settings, SeasonPair pair, Epochs epochs, int later,
			List<Finding> findings) {
		int n = input.map().map().accessPointCount();
		double[][] changes = pair.changes();
		Doubles all = new Doubles();
		int tested = 0;
		for (int a = 0; a < n; a++) {
			for (double change : changes[a]) {
				all.add(change);
			}
			tested += changes[a].length >= FEWEST_PLACES.count() ? 1 : 0;
		}
		double[] usual = all.toArray();
		double least = Math.max(settings.of(CHANGE), settings.of(TIMES) * Median.of(usual));
		Walking walking = Walking.of(input);
		for (int a = 0; a < n; a++) {
			if (changes[a].length < FEWEST_PLACES.count() || walking.is(a) || !pair.isHeardWellInBoth(a, FEWEST_LOUD.count())) {
				continue;
			}
			double change = Median.of(changes[a]);
			if (pair.isStuck(a) || change < least
					|| !KolmogorovSmirnov.differ(changes[a], usual, settings.of(ALPHA) / tested)) {
				continue;
			}
			Loudest then = Loudest.of(input, pair, a, true);
			Loudest now = Loudest.of(input, pair, a, false);
			if (then.floor != now.floor || then.metresTo(now) >= settings.of(METRES)) {
				findings.add(finding(input, epochs, later, a, changes[a], usual, change, then, now));
			}
		}
	}

	/** Where an access point is loudest: centroid weighted by amplitude, on its loudest floor, among places of a pair. */
	private record Loudest(int floor, double x, double y, double dbm) {

		static Loudest of(RuleInput input, SeasonPair pair, int a, boolean then) {
			RadioMap map = Spots.of(input).map();
			Map<Integer, Doubles> byFloor = new TreeMap<>();
			for (int p = 0; p < pair.size(); p++) {
				byFloor.computeIfAbsent(map.floor(then ? pair.spotThen(p) : pair.spotNow(p)), f -> new Doubles())
						.add(then ? pair.levelThen(p, a) : pair.levelNow(p, a));
			}
			double top = Double.NEGATIVE_INFINITY;
			int floor = 0;
			for (Map.Entry<Integer, Doubles> each : byFloor.entrySet()) {
				double[] levels = each.getValue().toArray();
				Arrays.sort(levels);
				// The third loudest: one sample with a wrong floor must not decide.
				double third = levels[Math.max(0, levels.length - FEWEST_LOUD.count())];
				if (third > top) {
					top = third;
					floor = each.getKey();
				}
			}
			double sum = 0;
			double x = 0;
			double y = 0;
			for (int p = 0; p < pair.size(); p++) {
				int spot = then ? pair.spotThen(p) : pair.spotNow(p);
				double level = then ? pair.levelThen(p, a) : pair.levelNow(p, a);
				if (map.floor(spot) == floor && level >= top - WITHIN_DB.value()) {
					double weight = Math.pow(10, level / 20);
					sum += weight;
					x += weight * map.x(spot);
					y += weight * map.y(spot);
				}
			}
			return new Loudest(floor, x / sum, y / sum, top);
		}

		double metresTo(Loudest other) {
			return Math.hypot(x - other.x, y - other.y);
		}

		String words() {
			return String.format(Locale.ROOT, "floor %d %s", floor, RuleWords.place(x, y));
		}
	}

	private Finding finding(RuleInput input, Epochs epochs, int later, int a, double[] changes, double[] usual,
			double change, Loudest then, Loudest now) {
		SurveyedMap map = input.map();
		String address = map.map().accessPoints().get(a);
		double usualDb = Median.of(usual);
		String message = String.format(Locale.ROOT,
				"%s was loudest at %s on %s and at %s on %s; at %d places surveyed both times its level changed by %s in"
						+ " the middle, that of others by %s.",
				address, then.words(), epochs.all().get(later - 1).last(), now.words(), epochs.all().get(later).first(),
				changes.length, RuleWords.decibels(change), RuleWords.decibels(usualDb));
		return Finding.of(this).message(message).about(new Subject.OfAccessPoint(address), map.siteNamed(input.unit()))
				.figure("places", changes.length, "").figure("change", change, "dB").figure("usual change", usualDb, "dB")
				.figure("moved", then.metresTo(now), "m").figure("floors", now.floor - then.floor, "")
				.figure("statistic", KolmogorovSmirnov.statistic(changes, usual), "").build();
	}
}
