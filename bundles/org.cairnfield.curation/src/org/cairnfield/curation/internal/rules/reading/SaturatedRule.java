package org.cairnfield.curation.internal.rules.reading;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.List;
import java.util.Locale;
import org.cairnfield.core.map.RadioMap;
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
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.model.values.Count;

/**
 * Levels piled up at the highest one of a survey. Strong levels get rarer with every dB, as they need a shorter
 * distance; a receiver at its limit shows the opposite.
 */
public final class SaturatedRule extends DescribedRule {

	public static final Parameter TIMES = Parameter.number("times",
			Messages.SaturatedRule_howManyTimesAsOften,
			3, 1.5, 100, "", onCampuses(Messages.SaturatedRule_15FindsTheSame));
	public static final Parameter FEWEST = Parameter.count("fewest-readings",
			Messages.SaturatedRule_readingsAtTheHighestLevel, 20, 2,
			100_000, onCampuses(Messages.SaturatedRule_10And40FindThe));
	public static final Parameter ABOVE = Parameter.number("above-dbm", Messages.SaturatedRule_aReceiverIsNotAt, -60,
			-80, 0,
			"dBm", onCampuses(Messages.SaturatedRule_70FindsTheSame50));

	private static final Threshold BELOW_DB = new Threshold(Messages.SaturatedRule_levelsBelowTheLimitThat, 3, "dB",
			judged(Messages.SaturatedRule_aFewLevelsSoThat));
	private static final Threshold STRAYS = new Threshold(Messages.SaturatedRule_shareOfReadingsThatMay, 0.1,
			judged(Messages.SaturatedRule_aStrayOrTwoNot));
	private static final Threshold FEWEST_ACCESS_POINTS = new Threshold(Messages.SaturatedRule_accessPointsAtTheLimit,
			3,
			judged(Messages.SaturatedRule_oneOrTwoMayHang));

	public SaturatedRule() {
		super("saturated-levels", Messages.SaturatedRule_levelsAtTheReceiverS,
				Messages.SaturatedRule_whereTheReceiverReadsIts,
				Severity.NOTE, Topic.READING, RuleScope.SURVEY, TIMES, FEWEST, ABOVE);
	}

	@Override
	protected List<Threshold> fixed() {
		return List.of(BELOW_DB, STRAYS, FEWEST_ACCESS_POINTS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		LevelCounts counts = LevelCounts.of(input);
		int limit = limit(counts, settings);
		if (limit > RadioMap.HIGHEST_RSSI_DBM) {
			return RuleOutcome.found(List.of());
		}
		int at = counts.at(limit);
		int below = counts.mostAround(limit, BELOW_DB.count());
		Selected top = new Selected(input.map());
		RadioMap map = input.map().map();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				if (map.rssiDbm(k) == limit) {
					top.add(s, k);
				}
			}
		}
		if (top.addresses().size() < FEWEST_ACCESS_POINTS.count()) {
			return RuleOutcome.found(List.of());
		}
		String message = String.format(Locale.ROOT,
				Messages.SaturatedRule_ofReadDbmTheHighest,
				Count.of(at, "reading"), input.unit(), limit,
				Count.of(top.addresses().size(), Messages.SaturatedRule_accessPoint),
				Count.of(below, "time"));
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit()))
				.beside(top.accessPoints()).beside(top.subjects()).figure("level", limit, "dBm")
				.figure("readings", at, "").figure(Messages.SaturatedRule_mostAtALevelBelow, below, "").build()));
	}

	/** The level at which readings pile up with hardly any above, or one above the range. */
	private static int limit(LevelCounts counts, Settings settings) {
		int above = 0;
		for (int level = RadioMap.HIGHEST_RSSI_DBM; level >= settings.of(ABOVE); level--) {
			int at = counts.at(level);
			if (at >= settings.countOf(FEWEST) && above <= STRAYS.value() * at
					&& at >= settings.of(TIMES) * Math.max(1, counts.mostAround(level, BELOW_DB.count()))) {
				return level;
			}
			above += at;
		}
		return RadioMap.HIGHEST_RSSI_DBM + 1;
	}
}
