package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.stats.Median;
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
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.internal.rules.evidence.SignalNeighbours;
import org.cairnfield.model.values.Count;

/**
 * A stretch of a survey in which x and y were exchanged. A single sample may fit better that way by chance; three in a
 * row that all do, by metres and by half, hardly.
 */
public final class SwappedAxesRule extends DescribedRule {

	public static final Parameter GAIN = Parameter.number("gain-metres",
			Messages.SwappedAxesRule_howMuchNearerItsNeighbours, 4, 1,
			50,
			"m", onCampuses(Messages.SwappedAxesRule_2And8FindThe));
	public static final Parameter FEWEST = Parameter.count("fewest-places", Messages.SwappedAxesRule_placesInARow, 3, 1,
			1000,
			onCampuses(Messages.SwappedAxesRule_2And6FindThe));

	public SwappedAxesRule() {
		super("swapped-axes", Messages.SwappedAxesRule_xAndYExchanged,
				Messages.SwappedAxesRule_aStretchNotedWithX,
				Severity.ERROR,
				Topic.SAMPLE, RuleScope.SITE, GAIN, FEWEST);
	}

	@Override
	public void prepare(RuleInput input, Workers workers) {
		SignalNeighbours.of(input, workers);
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(SwappedAxes.THRESHOLDS, Unlikeness.THRESHOLDS, SignalNeighbours.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		List<Finding> findings = new ArrayList<>();
		for (SwappedAxes.Group group : new SwappedAxes(input, settings.of(GAIN), settings.countOf(FEWEST), workers)
				.groups()) {
			findings.add(finding(input.map(), group));
		}
		return RuleOutcome.found(findings);
	}

	private Finding finding(SurveyedMap map, SwappedAxes.Group group) {
		int[] samples = group.samples();
		double asNoted = Median.of(group.asNoted());
		double exchanged = Median.of(group.exchanged());
		String survey = map.surveys().get(map.survey(samples[0])).id();
		String message = String.format(Locale.ROOT,
				Messages.SwappedAxesRule_inARowOfOn,
				Count.of(samples.length, "sample"), survey, map.map().floor(samples[0]), map.sampleId(samples[0]),
				map.sampleId(samples[samples.length - 1]), RuleWords.metres(asNoted), RuleWords.metres(exchanged));
		return Finding.of(this).message(message).about(map.subjects(samples))
				.beside(List.of(new Subject.OfSurvey(survey))).figure("samples", samples.length, "")
				.figure(Messages.SwappedAxesRule_asNoted, asNoted, "m").figure("exchanged", exchanged, "m")
				.remedy(new Remedy.SwapAxes(map.ids(samples))).build();
	}
}
