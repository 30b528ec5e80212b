package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.practice;

import java.util.ArrayList;
import java.util.Arrays;
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
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.model.values.Count;

/**
 * Steps between consecutive times that nobody walks. Men in their twenties at their fastest walk 2.5 m/s on average
 * (Bohannon, Age and Ageing 26, 1997; value from memory). Where a track jumps away and back, what lies between is
 * reported; a jump without return is reported by its two ends.
 */
public final class JumpRule extends DescribedRule {

	/** The figure that grows with the fault; findings of planted faults are compared by it. */
	public static final String STRENGTH = Messages.JumpRule_beyondAWalk;

	public static final Parameter SPEED = Parameter.number("fastest", Messages.JumpRule_walkingSpeedNotExceeded, 2.5,
			0.5, 20, "m/s",
			judged(Messages.JumpRule_walkingAtFullSpeedFrom));
	public static final Parameter SLACK = Parameter.number("slack-metres", Messages.JumpRule_allowedBeyondThatForNoting,
			2,
			0, 50,
			"m", onCampuses(Messages.JumpRule_1GivesAPrecisionOf));
	public static final Parameter FLOOR = Parameter.number("seconds-per-floor", Messages.JumpRule_leastTimeFromOneFloor,
			4,
			0, 120, "s", onCampuses(Messages.JumpRule_2And8FindAs));
	public static final Parameter MOST = Parameter.share("most-steps",
			Messages.JumpRule_shareOfSuchStepsFrom, 0.1,
			onCampuses(Messages.JumpRule_005And015));

	private static final Threshold LONGEST_ASIDE = new Threshold(Messages.JumpRule_stepsBetweenAJumpAnd, 60,
			judged(Messages.JumpRule_aStretchOfAWalk));
	private static final Threshold CLOCK_SECONDS = new Threshold(Messages.JumpRule_allowedForTheClock, 1, "s",
			practice(Messages.JumpRule_timesAreOftenCutTo));
	private static final Threshold CLEARLY = new Threshold(
			Messages.JumpRule_oneEndIsBlamedAlone, 3,
			judged(Messages.JumpRule_clearlyMoreThanTheOther));

	public JumpRule() {
		super("jump", Messages.JumpRule_fasterThanAPersonWalks,
				Messages.JumpRule_aSurveyorCannotBeAt,
				Severity.WARNING, Topic.SAMPLE, RuleScope.SURVEY, SPEED, SLACK, FLOOR, MOST);
	}

	@Override
	protected List<Threshold> fixed() {
		return List.of(LONGEST_ASIDE, CLOCK_SECONDS, CLEARLY);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Sequence sequence = Sequence.of(input);
		List<Finding> findings = new ArrayList<>();
		boolean timed = false;
		for (int t = 0; t < sequence.tracks(); t++) {
			if (sequence.isTimed(t) && sequence.track(t).length > 1) {
				timed = true;
				look(input, settings, sequence.track(t), findings);
			}
		}
		return timed ? RuleOutcome.found(findings) : RuleOutcome.notApplicable(Messages.JumpRule_samplesHaveNoTimes);
	}

	/** How far beyond what can be walked b is from a, in metres; not above 0 where it can. */
	private static double excess(RadioMap map, Settings settings, int a, int b) {
		double seconds = (map.timeMillis(b) - map.timeMillis(a)) / 1000.0 + CLOCK_SECONDS.value();
		if (map.site(a) != map.site(b)) {
			return 0;
		}
		double onStairs = Math.abs(map.floor(a) - map.floor(b)) * settings.of(FLOOR);
		double metres = Math.hypot(map.x(a) - map.x(b), map.y(a) - map.y(b));
		return metres - settings.of(SLACK) - settings.of(SPEED) * (seconds - onStairs);
	}

	private void look(RuleInput input, Settings settings, int[] track, List<Finding> findings) {
		RadioMap map = input.map().map();
		Ints jumps = new Ints();
		for (int i = 0; i + 1 < track.length; i++) {
			if (excess(map, settings, track[i], track[i + 1]) > 0) {
				jumps.add(i);
			}
		}
		if (jumps.size() > settings.of(MOST) * (track.length - 1) && jumps.size() > 5) {
			findings.add(notAWalk(input, track, jumps.size()));
			return;
		}
		for (int j = 0; j < jumps.size(); j++) {
			int from = jumps.get(j);
			int back = back(input.map(), track, jumps, j);
			boolean single = back == j || jumps.get(back) - from > 1 && ends(input.map(), track, from).length == 1;
			if (!single) {
				findings.add(aside(input, settings, track, from, jumps.get(back)));
				j = back;
			} else {
				findings.add(oneWay(input, settings, track, from));
			}
		}
	}

	/** The jump that leads back to where the j-th left, of those with not too much in between, or j. */
	private static int back(SurveyedMap map, int[] track, Ints jumps, int j) {
		int before = track[jumps.get(j)];
		for (int k = j + 1; k < jumps.size() && jumps.get(k) - jumps.get(j) <= LONGEST_ASIDE.count(); k++) {
			int last = track[jumps.get(k)];
			int after = track[jumps.get(k) + 1];
			double away = Math.min(metres(map, before, track[jumps.get(j) + 1]), metres(map, last, after));
			boolean floors = map.map().floor(before) == map.map().floor(after);
			boolean near = metres(map, before, after) <= away / 2;
			boolean onOther = map.map().floor(before) != map.map().floor(last)
					&& map.map().floor(before) != map.map().floor(track[jumps.get(j) + 1]);
			if (floors && (near || onOther)) {
				return k;
			}
		}
		return j;
	}

	/** Away after {@code from}, back after {@code last}. */
	private Finding aside(RuleInput input, Settings settings, int[] track, int from, int last) {
		SurveyedMap map = input.map();
		int[] between = Arrays.copyOfRange(track, from + 1, last + 1);
		String message = String.format(Locale.ROOT, Messages.JumpRule_ofAsideInSFrom,
				Count.of(between.length, "sample"), input.unit(), between.length == 1 ? "lies" : "lie",
				way(map, track[from], track[from + 1]), seconds(map, track[from], track[from + 1]),
				map.sampleId(track[from]), RuleWords.list(map.ids(between)));
		return Finding.of(this).message(message).about(map.subjects(between))
				.beside(map.subjects(track[from], track[last + 1]))
				.figure("step", metres(map, track[from], track[from + 1]), "m")
				.figure("time", seconds(map, track[from], track[from + 1]), "s").figure("samples", between.length, "")
				.figure(STRENGTH, excess(map.map(), settings, track[from], track[from + 1]), "m")
				.remedy(new Remedy.SetAsideSamples(map.ids(between), Messages.JumpRule_cannotBeReachedOnFoot))
				.build();
	}

	private Finding oneWay(RuleInput input, Settings settings, int[] track, int from) {
		SurveyedMap map = input.map();
		int a = track[from];
		int b = track[from + 1];
		String message = String.format(Locale.ROOT, Messages.JumpRule_fromToInItIs, map.sampleId(a),
				map.sampleId(b), input.unit(), way(map, a, b), seconds(map, a, b));
		return Finding.of(this).message(message).about(map.subjects(ends(map, track, from)))
				.figure("step", metres(map, a, b), "m").figure("time", seconds(map, a, b), "s")
				.figure(STRENGTH, excess(map.map(), settings, a, b), "m").build();
	}

	/** The end of a step that makes the longer detour, where one clearly does; otherwise both. */
	private static int[] ends(SurveyedMap map, int[] track, int from) {
		int a = track[from];
		int b = track[from + 1];
		double byA = from == 0 ? 0 : detour(map, track[from - 1], a, b);
		double byB = from + 2 >= track.length ? 0 : detour(map, a, b, track[from + 2]);
		double half = metres(map, a, b) / 2;
		if (byA > CLEARLY.value() * byB && byA >= half) {
			return new int[] { a };
		}
		return byB > CLEARLY.value() * byA && byB >= half ? new int[] { b } : new int[] { a, b };
	}

	private static double detour(SurveyedMap map, int before, int at, int after) {
		return metres(map, before, at) + metres(map, at, after) - metres(map, before, after);
	}

	private Finding notAWalk(RuleInput input, int[] track, int jumps) {
		String message = String.format(Locale.ROOT,
				Messages.JumpRule_ofStepsOfAreFaster, jumps,
				track.length - 1, input.unit());
		return Finding.of(this).severity(Severity.NOTE).message(message).about(new Subject.OfSurvey(input.unit()))
				.figure("steps", jumps, "").build();
	}

	private static String way(SurveyedMap map, int a, int b) {
		return RuleWords.metres(metres(map, a, b)) + (map.map().floor(a) == map.map().floor(b) ? ""
				: String.format(Locale.ROOT, Messages.JumpRule_andFromFloorTo, map.map().floor(a), map.map().floor(b)));
	}

	private static double metres(SurveyedMap map, int a, int b) {
		return Math.hypot(map.map().x(a) - map.map().x(b), map.map().y(a) - map.map().y(b));
	}

	private static double seconds(SurveyedMap map, int a, int b) {
		return (map.map().timeMillis(b) - map.map().timeMillis(a)) / 1000.0;
	}
}
