package org.cairnfield.curation.internal.rules.reading;

import java.util.List;
import java.util.Locale;
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
 */
public final class OutOfRangeRule extends DescribedRule {

	public static final Parameter HIGHEST = Parameter.number("highest-dbm", "highest plausible level", -25, -60, 0, "dBm");
	public static final Parameter LOWEST = Parameter.number("lowest-dbm", "lowest plausible level", -105, -120, -80,
			"dBm");

	public OutOfRangeRule() {
		super("level-out-of-range", "Levels outside the plausible range",
				"A level stronger than a metre from an access point or weaker than the receiver's own noise is a code, a"
						+ " phone beside the sender or a fault, and it weighs most in every distance.",
				Severity.WARNING, Topic.READING, RuleScope.SURVEY, HIGHEST, LOWEST);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		double highest = settings.of(HIGHEST);
		double lowest = settings.of(LOWEST);
		Selected bad = new Selected(input.map());
		var map = input.map().map();
		int above = 0;
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				if (map.rssiDbm(k) > highest || map.rssiDbm(k) < lowest) {
					bad.add(s, k);
					above += map.rssiDbm(k) > highest ? 1 : 0;
				}
			}
		}
		if (bad.size() == 0) {
			return RuleOutcome.found(List.of());
		}
		String message = String.format(Locale.ROOT, "%s of %s outside %s … %s dBm (%d … %d dBm met), of %s: %s.",
				Count.of(bad.size(), "reading"), input.unit(), RuleWords.number(lowest), RuleWords.number(highest),
				bad.lowestDbm(), bad.highestDbm(), Count.of(bad.addresses().size(), "access point"),
				RuleWords.list(bad.addresses()));
		return RuleOutcome.found(List.of(Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit()))
				.about(bad.accessPoints()).beside(bad.subjects()).figure("readings", bad.size(), "")
				.figure("too strong", above, "").figure("too weak", bad.size() - above, "")
				.figure("highest", bad.highestDbm(), "dBm").figure("lowest", bad.lowestDbm(), "dBm")
				.remedy(bad.drop("outside the plausible range")).build()));
	}
}
