package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Sequence;
import org.cairnfield.model.values.Count;

/**
 * The same readings, level by level, at different places of one survey. Repeats of the sample just before are left to
 * {@link RepeatedScanRule}.
 */
public final class OneScanTwoPlacesRule extends DescribedRule {

	public static final Alternative ALL = new Alternative("all", "Set aside all of them");
	public static final Alternative KEEP_FIRST = new Alternative("keep-first", "Keep the first of each");

	public static final Parameter FEWEST = Parameter.count("fewest-readings", "readings that must agree", 6, 1, 100,
			standard("noise of 1 dB lets six levels agree by chance once in 2,000 pairs, of 3 dB once in two million"));
	public static final Parameter METRES = Parameter.number("apart-metres", "places farther apart than this", 0.5, 0,
			1000,
			"m", onCampuses("0.25 and 1 find the same"));

	public OneScanTwoPlacesRule() {
		super("one-scan-two-places", "One scan at two places",
				"A fingerprint that stands at two places is wrong at one of them at least, and no match can tell which.",
				Severity.WARNING, Topic.SAMPLE, RuleScope.SURVEY, FEWEST, METRES);
	}

	@Override
	public List<Alternative> alternatives() {
		return List.of(KEEP_FIRST, ALL);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		Sequence sequence = Sequence.of(input);
		Map<Long, Ints> byReadings = new HashMap<>();
		for (int s = 0; s < map.size(); s++) {
			if (map.map().heard(s) >= settings.countOf(FEWEST) && !RepeatedScanRule.isRepeat(map, sequence, s)) {
				byReadings.computeIfAbsent(map.readingsKey(s), k -> new Ints()).add(s);
			}
		}
		List<int[]> groups = new ArrayList<>();
		double farthest = 0;
		for (Ints group : byReadings.values()) {
			double apart = farthest(map, group);
			if (apart > settings.of(METRES)) {
				groups.add(group.toArray());
				farthest = Double.isFinite(apart) ? Math.max(farthest, apart) : farthest;
			}
		}
		if (groups.isEmpty()) {
			return RuleOutcome.found(List.of());
		}
		int[] samples = groups.stream().flatMapToInt(Arrays::stream).sorted().toArray();
		String message = String.format(Locale.ROOT,
				"In %s, %s at places more than %s apart, %s in all%s.", input.unit(),
				groups.size() == 1 ? "one scan stands" : groups.size() + " scans stand each",
				RuleWords.metres(settings.of(METRES)), Count.of(samples.length, "sample"),
				farthest > 0 ? "; the farthest on one floor are " + RuleWords.metres(farthest) + " apart" : "");
		String reason = "the same scan stands at another place too";
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(map.subjects(samples))
				.beside(List.of(new Subject.OfSurvey(input.unit()))).figure("scans", groups.size(), "")
				.figure("samples", samples.length, "").figure("farthest apart", farthest, "m")
				.remedy(KEEP_FIRST, new Remedy.SetAsideSamples(map.ids(later(groups, sequence)), reason))
				.remedy(ALL, new Remedy.SetAsideSamples(map.ids(samples), reason)).build()));
	}

	/** All but the first recorded of each scan. */
	private static int[] later(List<int[]> groups, Sequence sequence) {
		Comparator<Integer> recorded = Comparator.<Integer>comparingInt(sequence::trackOf)
				.thenComparingInt(sequence::placeInTrack);
		return groups.stream().flatMap(group -> Arrays.stream(group).boxed().sorted(recorded).skip(1)).mapToInt(s -> s)
				.sorted().toArray();
	}

	/** From the first to any other: twice that is the most there can be, and the first shows whether all agree. */
	private static double farthest(SurveyedMap map, Ints group) {
		double farthest = 0;
		for (int i = 1; i < group.size(); i++) {
			farthest = Math.max(farthest, map.map().metresApart(group.get(0), group.get(i)));
		}
		return farthest;
	}
}
