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
			"how many times as often as any of the 3 levels below",
			3, 1.5, 100, "", onCampuses("1.5 finds the same, 6 none of three"));
	public static final Parameter FEWEST = Parameter.count("fewest-readings", "readings at the highest level", 20, 2,
			100_000, onCampuses("10 and 40 find the same"));
	public static final Parameter ABOVE = Parameter.number("above-dbm", "a receiver is not at its limit below", -60,
			-80, 0,
			"dBm", onCampuses("-70 finds the same, -50 none of three"));

	private static final Threshold BELOW_DB = new Threshold("levels below the limit that are compared", 3, "dB",
			judged("a few levels, so that one odd level does not decide"));
	private static final Threshold STRAYS = new Threshold("share of readings that may lie above the limit", 0.1,
			judged("a stray or two, not a tail"));
	private static final Threshold FEWEST_ACCESS_POINTS = new Threshold("access points at the limit", 3,
			judged("one or two may hang beside the path"));

	public SaturatedRule() {
		super("saturated-levels", "Levels at the receiver's upper limit",
				"Where the receiver reads its highest level, the true one is not known: places near the access point cannot"
						+ " be told apart.",
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
				"%s of %s read %d dBm, the highest level there but for strays, of %s; the levels just below occur at most"
						+ " %s each.",
				Count.of(at, "reading"), input.unit(), limit, Count.of(top.addresses().size(), "access point"),
				Count.of(below, "time"));
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit()))
				.beside(top.accessPoints()).beside(top.subjects()).figure("level", limit, "dBm")
				.figure("readings", at, "").figure("most at a level below", below, "").build()));
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
