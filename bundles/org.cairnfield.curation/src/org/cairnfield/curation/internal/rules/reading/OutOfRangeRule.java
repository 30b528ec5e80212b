package org.cairnfield.curation.internal.rules.reading;

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
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.model.values.Count;

/**
 * Levels that a receiver among fixed access points can hardly have met. Above: 20 dBm radiated, the most allowed at
 * 2.4 GHz in much of the world, lose 40 dB on the first metre of free space, and a hand-held antenna takes a few more.
 * Below: thermal noise in 20 MHz is −101 dBm before the receiver adds its own.
 * <p>
 * Matching takes a reading that is left out for an access point that was not heard. For a code below the noise that is
 * the truth; for a strong level it is as wrong as can be. Strong levels left out gained nothing on any map measured,
 * and cost 0.03 m of 3.83 m in three buildings, where people test right below access points as well. So these are
 * reported without a remedy.
 */
public final class OutOfRangeRule extends DescribedRule {

	public static final Parameter HIGHEST = Parameter.number("highest-dbm",
			Messages.OutOfRangeRule_highestPlausibleLevel, -25, -60, 0,
			"dBm",
			standard(
					Messages.OutOfRangeRule_of20DbmTheMost));
	public static final Parameter LOWEST = Parameter.number("lowest-dbm", Messages.OutOfRangeRule_lowestPlausibleLevel,
			-105, -120, -80,
			"dBm",
			standard(
					Messages.OutOfRangeRule_thermalNoiseIn20Mhz));

	public OutOfRangeRule() {
		super("level-out-of-range", Messages.OutOfRangeRule_levelsOutsideThePlausibleRange,
				Messages.OutOfRangeRule_aLevelBelowTheReceiver,
				Severity.WARNING, Topic.READING, RuleScope.SURVEY, HIGHEST, LOWEST);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		double highest = settings.of(HIGHEST);
		double lowest = settings.of(LOWEST);
		Selected strong = new Selected(input.map());
		Selected weak = new Selected(input.map());
		RadioMap map = input.map().map();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				if (map.rssiDbm(k) > highest) {
					strong.add(s, k);
				} else if (map.rssiDbm(k) < lowest) {
					weak.add(s, k);
				}
			}
		}
		List<Finding> findings = new ArrayList<>();
		if (weak.size() > 0) {
			findings.add(finding(input, weak, "below", lowest).figure(Messages.OutOfRangeRule_tooWeak, weak.size(), "")
					.remedy(weak.drop(Messages.OutOfRangeRule_belowWhatAReceiverCan)).build());
		}
		if (strong.size() > 0) {
			findings.add(finding(input, strong, "above", highest).severity(Severity.NOTE)
					.figure(Messages.OutOfRangeRule_tooStrong, strong.size(), "").build());
		}
		return RuleOutcome.found(findings);
	}

	private Finding.Builder finding(RuleInput input, Selected bad, String side, double limitDbm) {
		String message = String.format(Locale.ROOT, Messages.OutOfRangeRule_ofDbmDbmOf,
				Count.of(bad.size(), "reading"),
				input.unit(), side, RuleWords.number(limitDbm), bad.lowestDbm(), bad.highestDbm(),
				Count.of(bad.addresses().size(), Messages.OutOfRangeRule_accessPoint), RuleWords.list(bad.addresses()));
		return Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit())).about(bad.accessPoints())
				.beside(bad.subjects()).figure("readings", bad.size(), "").figure("highest", bad.highestDbm(), "dBm")
				.figure("lowest", bad.lowestDbm(), "dBm");
	}
}
