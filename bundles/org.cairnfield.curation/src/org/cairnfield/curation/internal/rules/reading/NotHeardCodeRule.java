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
import org.cairnfield.core.text.Words;
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

	public static final Parameter TIMES = Parameter.number("times", Messages.NotHeardCodeRule_howManyTimesAsOften,
			8,
			2, 1000, "", onCampuses(Messages.NotHeardCodeRule_4And16FindThe));
	public static final Parameter FEWEST = Parameter.count("fewest-readings",
			Messages.NotHeardCodeRule_readingsAtThatLevel, 20, 2, 100_000,
			onCampuses(Messages.NotHeardCodeRule_10And40FindThe));
	public static final Parameter BELOW = Parameter.number("below-dbm", Messages.NotHeardCodeRule_levelsLookedAtBeside0,
			-92,
			-120,
			-80, "dBm", practice(
					Messages.NotHeardCodeRule_100105And110Are));

	private static final Threshold AROUND_DB = new Threshold(Messages.NotHeardCodeRule_levelsOnEitherSideThat, 3, "dB",
			standard(Messages.NotHeardCodeRule_noiseInAReceiverSpreads));
	private static final Threshold FEWEST_ACCESS_POINTS = new Threshold(
			Messages.NotHeardCodeRule_accessPointsWithTheCode, 3,
			judged(Messages.NotHeardCodeRule_oneOrTwoMayBe));

	public NotHeardCodeRule() {
		super("not-heard-code", Messages.NotHeardCodeRule_aCodeForNotHeard,
				Messages.NotHeardCodeRule_whatStandsForNotHeard,
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
				Messages.NotHeardCodeRule_dbmOccursInOfOf,
				level, Count.of(coded.size(), "time"), Count.of(coded.samples().length, "sample"), input.unit(),
				Count.of(coded.addresses().size(), Messages.NotHeardCodeRule_accessPoint), AROUND_DB.count(),
				Count.of(around, "time"));
		return Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit())).about(coded.subjects())
				.figure("level", level, "dBm").figure("readings", coded.size(), "")
				.figure(Messages.NotHeardCodeRule_mostAtALevelBeside, around, "")
				.remedy(coded.drop(Words.bind(Messages.NotHeardCodeRule_dbmStandsForNotHeard, level))).build();
	}
}
