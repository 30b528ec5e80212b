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
import org.cairnfield.core.text.Words;
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

	public static final Alternative ALL = new Alternative("all", Messages.OneScanTwoPlacesRule_setAsideAllOfThem);
	public static final Alternative KEEP_FIRST = new Alternative("keep-first",
			Messages.OneScanTwoPlacesRule_keepTheFirstOfEach);

	public static final Parameter FEWEST = Parameter.count("fewest-readings",
			Messages.OneScanTwoPlacesRule_readingsThatMustAgree, 6, 1, 100,
			standard(Messages.OneScanTwoPlacesRule_noiseOf1DbLets));
	public static final Parameter METRES = Parameter.number("apart-metres",
			Messages.OneScanTwoPlacesRule_placesFartherApartThanThis, 0.5, 0,
			1000,
			"m", onCampuses(Messages.OneScanTwoPlacesRule_025And1Find));

	public OneScanTwoPlacesRule() {
		super("one-scan-two-places", Messages.OneScanTwoPlacesRule_oneScanAtTwoPlaces,
				Messages.OneScanTwoPlacesRule_aFingerprintThatStandsAt,
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
				Messages.OneScanTwoPlacesRule_inAtPlacesMoreThan, input.unit(),
				groups.size() == 1 ? Messages.OneScanTwoPlacesRule_oneScanStands
						: Words.bind(Messages.OneScanTwoPlacesRule_scansStandEach, groups.size()),
				RuleWords.metres(settings.of(METRES)), Count.of(samples.length, "sample"),
				farthest > 0
						? Words.bind(Messages.OneScanTwoPlacesRule_theFarthestOnOneFloor, RuleWords.metres(farthest))
						: "");
		String reason = Messages.OneScanTwoPlacesRule_theSameScanStandsAt;
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(map.subjects(samples))
				.beside(List.of(new Subject.OfSurvey(input.unit()))).figure("scans", groups.size(), "")
				.figure("samples", samples.length, "")
				.figure(Messages.OneScanTwoPlacesRule_farthestApart, farthest, "m")
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
