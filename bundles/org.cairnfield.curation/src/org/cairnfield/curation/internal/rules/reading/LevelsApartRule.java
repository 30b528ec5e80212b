package org.cairnfield.curation.internal.rules.reading;

import static org.cairnfield.curation.rules.Reason.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.model.values.Count;

/**
 * One access point read at one place by one device at levels far apart. Levels at a place vary by a few dB, by ten and
 * more when somebody walks past; thirty is a factor of a thousand in power.
 * <p>
 * A sample that strays at several access points at once belongs elsewhere, and can be set aside: that made none of eleven
 * maps worse, and some better. A single reading that strays is scatter or a second sender. Leaving it
 * out, which matching takes for not heard, made three buildings worse, so that is only noted.
 */
public final class LevelsApartRule extends DescribedRule {

	public static final Parameter APART = Parameter.number("apart-db",
			Messages.LevelsApartRule_fromLowestToHighestLevel, 30,
			10,
			100, "dB",
			measured(
					Messages.LevelsApartRule_aFactorOfAThousand));
	public static final Parameter SEVERAL = Parameter.count("stray-readings",
			Messages.LevelsApartRule_readingsOfASampleThat,
			2, 1, 100,
			measured(
					Messages.LevelsApartRule_samplesWithOneStrayReading));

	public LevelsApartRule() {
		super("levels-apart", Messages.LevelsApartRule_contradictoryLevelsAtOnePlace,
				Messages.LevelsApartRule_twoLevelsThirtyDbApart,
				Severity.WARNING, Topic.READING, RuleScope.SURVEY, APART, SEVERAL);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		StrayReadings strays = StrayReadings.of(input, settings.of(APART), settings.countOf(SEVERAL));
		List<Finding> findings = new ArrayList<>();
		if (!strays.samples().isEmpty()) {
			findings.add(samples(input, settings, strays));
		}
		if (strays.single().size() > 0) {
			findings.add(single(input, settings, strays));
		}
		return RuleOutcome.found(findings);
	}

	private Finding samples(RuleInput input, Settings settings, StrayReadings strays) {
		int[] samples = strays.samples().stream().mapToInt(Integer::intValue).toArray();
		String message = String.format(Locale.ROOT,
				Messages.LevelsApartRule_inAndMoreFarFrom,
				input.unit(), Count.of(samples.length, "sample"),
				samples.length == 1 ? "has" : "have", Count.of(settings.countOf(SEVERAL), "reading"),
				RuleWords.number(settings.of(APART)),
				RuleWords.list(input.map().ids(samples)));
		return Finding.of(this).message(message).about(input.map().subjects(samples))
				.beside(List.of(new Subject.OfSurvey(input.unit())))
				.figure("samples", samples.length, "").figure("places", strays.placesOfSamples(), "")
				.remedy(new Remedy.SetAsideSamples(input.map().ids(samples),
						Messages.LevelsApartRule_farFromTheOtherSamples))
				.build();
	}

	private Finding single(RuleInput input, Settings settings, StrayReadings strays) {
		Selected bad = strays.single();
		String message = String.format(Locale.ROOT,
				Messages.LevelsApartRule_inAtLevelsDbApart,
				input.unit(),
				Count.of(bad.addresses().size(), Messages.LevelsApartRule_accessPoint),
				Count.of(strays.otherPlaces(), "place"),
				bad.addresses().size() == 1 ? "has" : "have", RuleWords.number(settings.of(APART)), strays.worst());
		return Finding.of(this).severity(Severity.NOTE).message(message).about(new Subject.OfSurvey(input.unit()))
				.about(bad.accessPoints())
				.beside(bad.subjects()).figure("places", strays.otherPlaces(), "")
				.figure(Messages.LevelsApartRule_farthestApart, strays.worstDb(), "dB")
				.figure("readings", bad.size(), "").build();
	}
}
