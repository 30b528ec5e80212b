package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.model.values.Count;

/** Samples that lie outside the outline of their floor. */
public final class OutsideOutlineRule extends DescribedRule {

	public static final Parameter TOLERANCE = Parameter.number("tolerance-metres",
			Messages.OutsideOutlineRule_howFarOutsideIsStill, 1,
			0,
			100, "m", onCampuses(Messages.OutsideOutlineRule_05And2Find));

	public OutsideOutlineRule() {
		super("outside-outline", Messages.OutsideOutlineRule_outsideTheFloorSOutline,
				Messages.OutsideOutlineRule_nobodyStoodThereThePosition,
				Severity.ERROR, Topic.SAMPLE, RuleScope.SURVEY, TOLERANCE);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		Map<String, Polygon> outlines = new TreeMap<>();
		map.floors().forEach(f -> f.outline().ifPresent(o -> outlines.put(name(f.site(), f.level()), o)));
		Map<String, Ints> outside = new TreeMap<>();
		boolean any = false;
		for (int s = 0; s < map.size(); s++) {
			String floor = name(map.site(s), map.map().floor(s));
			Polygon outline = outlines.get(floor);
			any |= outline != null;
			if (outline != null && !outline.contains(map.map().x(s), map.map().y(s))) {
				double metres = outline.metresToEdge(map.map().x(s), map.map().y(s));
				if (metres > settings.of(TOLERANCE)) {
					outside.computeIfAbsent(floor, f -> new Ints()).add(s);
				}
			}
		}
		if (!any) {
			return RuleOutcome.notApplicable(Words.bind(Messages.OutsideOutlineRule_noFloorOfHasAn, input.unit()));
		}
		List<Finding> findings = new ArrayList<>();
		for (var each : outside.entrySet()) {
			findings.add(finding(input, each.getKey(), outlines.get(each.getKey()), each.getValue().toArray()));
		}
		return RuleOutcome.found(findings);
	}

	private static String name(String site, int level) {
		return Words.bind(Messages.OutsideOutlineRule_floor, site, level);
	}

	private Finding finding(RuleInput input, String floor, Polygon outline, int[] samples) {
		SurveyedMap map = input.map();
		double farthest = 0;
		for (int s : samples) {
			farthest = Math.max(farthest, outline.metresToEdge(map.map().x(s), map.map().y(s)));
		}
		String message = String.format(Locale.ROOT, Messages.OutsideOutlineRule_ofOnOutsideItsOutline,
				Count.of(samples.length, "sample"), input.unit(), floor, samples.length == 1 ? "lies" : "lie",
				RuleWords.metres(farthest), RuleWords.list(map.ids(samples)));
		return Finding.of(this).message(message).about(map.subjects(samples)).figure("samples", samples.length, "")
				.figure(Messages.OutsideOutlineRule_farthestOutside, farthest, "m")
				.remedy(new Remedy.SetAsideSamples(map.ids(samples),
						Messages.OutsideOutlineRule_outsideTheFloorSOutline2))
				.build();
	}
}
