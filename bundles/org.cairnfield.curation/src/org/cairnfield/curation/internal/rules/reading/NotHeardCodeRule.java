package org.cairnfield.curation.internal.rules.reading;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.practice;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
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
 * A level at the end of the scale that occurs far more often than those beside it: a code for "not heard" that intake
 * took for a level. Writing −100, −105 or −110 for what was not heard is common practice; noise in a real receiver
 * spreads levels over several dB.
 */
public final class NotHeardCodeRule extends DescribedRule {

	public static final Parameter TIMES = Parameter.number("times", "how many times as often as any level within 3 dB",
			8,
			2, 1000, "", onCampuses("4 and 16 find the same"));
	public static final Parameter FEWEST = Parameter.count("fewest-readings", "readings at that level", 20, 2, 100_000,
			onCampuses("10 and 40 find the same"));
	public static final Parameter BELOW = Parameter.number("below-dbm", "levels looked at, beside 0 and -1 dBm", -92,
			-120,
			-80, "dBm", practice(
					"-100, -105 and -110 are written for not heard; on simulated campuses -82 and -102 find the same"));

	private static final Threshold AROUND_DB = new Threshold("levels on either side that are compared", 3, "dB",
			standard("noise in a receiver spreads levels over several dB"));
	private static final Threshold FEWEST_ACCESS_POINTS = new Threshold("access points with the code", 3,
			judged("one or two may be that weak"));

	public NotHeardCodeRule() {
		super("not-heard-code", "A code for not heard among the levels",
				"What stands for “not heard” in some rows counts as a weak level in others: samples look alike that heard"
						+ " nothing in common.",
				Severity.ERROR, Topic.READING, RuleScope.SURVEY, TIMES, FEWEST, BELOW);
	}

	@Override
	protected List<Threshold> fixed() {
		return List.of(AROUND_DB, FEWEST_ACCESS_POINTS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		LevelCounts counts = LevelCounts.of(input);
		List<Finding> findings = new ArrayList<>();
		for (int level = RadioMap.LOWEST_RSSI_DBM; level <= RadioMap.HIGHEST_RSSI_DBM; level++) {
			boolean atAnEnd = level <= settings.of(BELOW) || level >= -1;
			int around = counts.mostAround(level, AROUND_DB.count());
			if (atAnEnd && counts.at(level) >= settings.countOf(FEWEST)
					&& counts.at(level) >= settings.of(TIMES) * Math.max(1, around)) {
				Selected coded = at(level, input);
				if (coded.addresses().size() >= FEWEST_ACCESS_POINTS.count()) {
					findings.add(finding(input, level, coded, around));
				}
			}
		}
		return RuleOutcome.found(findings);
	}

	private static Selected at(int level, RuleInput input) {
		Selected coded = new Selected(input.map());
		RadioMap map = input.map().map();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				if (map.rssiDbm(k) == level) {
					coded.add(s, k);
				}
			}
		}
		return coded;
	}

	private Finding finding(RuleInput input, int level, Selected coded, int around) {
		String message = String.format(Locale.ROOT,
				"%d dBm occurs %s in %s of %s, of %s; no level within %d dB occurs more than %s. It looks like a code"
						+ " for not heard.",
				level, Count.of(coded.size(), "time"), Count.of(coded.samples().length, "sample"), input.unit(),
				Count.of(coded.addresses().size(), "access point"), AROUND_DB.count(), Count.of(around, "time"));
		return Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit())).about(coded.subjects())
				.figure("level", level, "dBm").figure("readings", coded.size(), "")
				.figure("most at a level beside it", around, "")
				.remedy(coded.drop(level + " dBm stands for not heard")).build();
	}
}
