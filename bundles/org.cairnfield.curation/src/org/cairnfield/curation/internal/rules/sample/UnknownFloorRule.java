package org.cairnfield.curation.internal.rules.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.FloorPlan;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.model.values.Count;

/** Samples on a level that their site has no floor for. */
public final class UnknownFloorRule extends DescribedRule {

	public UnknownFloorRule() {
		super("unknown-floor", Messages.UnknownFloorRule_onAFloorThatDoes,
				Messages.UnknownFloorRule_noPlanShowsTheseSamples,
				Severity.ERROR, Topic.SAMPLE, RuleScope.SURVEY);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		Map<String, Set<Integer>> floors = map.floors().stream()
				.collect(Collectors.groupingBy(FloorPlan::site,
						Collectors.mapping(FloorPlan::level, Collectors.toCollection(TreeSet::new))));
		Map<Integer, Ints> strays = new TreeMap<>();
		boolean any = false;
		for (int s = 0; s < map.size(); s++) {
			Set<Integer> known = floors.get(map.site(s));
			any |= known != null;
			if (known != null && !known.contains(map.map().floor(s))) {
				strays.computeIfAbsent(map.map().floor(s), level -> new Ints()).add(s);
			}
		}
		if (!any) {
			return RuleOutcome.notApplicable(Words.bind(Messages.UnknownFloorRule_theFloorsOfTheSite, input.unit()));
		}
		List<Finding> findings = new ArrayList<>();
		strays.forEach((level, samples) -> findings.add(finding(input, level, samples.toArray(), floors)));
		return RuleOutcome.found(findings);
	}

	private Finding finding(RuleInput input, int level, int[] samples, Map<String, Set<Integer>> floors) {
		SurveyedMap map = input.map();
		String site = map.site(samples[0]);
		String message = String.format(Locale.ROOT,
				Messages.UnknownFloorRule_ofOnFloorWhichDoes,
				Count.of(samples.length, "sample"), input.unit(), samples.length == 1 ? "is" : "are", level, site,
				RuleWords.list(map.ids(samples)),
				floors.get(site).stream().map(Object::toString).collect(Collectors.joining(", ")));
		return Finding.of(this).message(message).about(map.subjects(samples)).figure("samples", samples.length, "")
				.build();
	}
}
