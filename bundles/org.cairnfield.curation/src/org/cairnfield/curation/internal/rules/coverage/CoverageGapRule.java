package org.cairnfield.curation.internal.rules.coverage;

import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cairnfield.core.geometry.Polygon;
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
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.FloorPlan;
import org.cairnfield.model.values.Count;

/**
 * Parts of a floor farther from any sample than a stated distance: cells within the outline, joined where they touch.
 * Where no outline is known, the smallest convex one around the samples is taken, and all gaps of a floor are one note,
 * as much of it may be no floor at all.
 */
public final class CoverageGapRule extends DescribedRule {

	public static final Parameter METRES = Parameter.number("within-metres",
			Messages.CoverageGapRule_aSampleShouldBeWithin, 6, 0.5, 200,
			"m",
			onCampuses(Messages.CoverageGapRule_3FindsTheSame12));
	public static final Parameter CELL = Parameter.number("cell-metres", Messages.CoverageGapRule_sideOfACell, 2, 0.25,
			20, "m",
			onCampuses(Messages.CoverageGapRule_1And4FindAll));
	public static final Parameter AREA = Parameter.number("least-area",
			Messages.CoverageGapRule_smallestGapThatIsReported, 12, 0, 10_000,
			"m²", onCampuses(Messages.CoverageGapRule_6FindsTheSame24));

	private static final int MOST_CELLS = 4_000_000;

	public CoverageGapRule() {
		super("coverage-gap", Messages.CoverageGapRule_partsOfAFloorWithout,
				Messages.CoverageGapRule_whereNobodyMeasuredADevice,
				Severity.WARNING, Topic.COVERAGE, RuleScope.FLOOR, METRES, CELL, AREA);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		RadioMap radio = map.map();
		String site = map.site(0);
		int level = radio.floor(0);
		Optional<Polygon> known = map.floor(site, level).flatMap(FloorPlan::outline);
		Polygon outline = known.orElseGet(() -> around(radio));
		if (outline == null) {
			return RuleOutcome.notApplicable(Words.bind(Messages.CoverageGapRule_samplesOfLieOnOne, input.unit()));
		}
		double side = settings.of(CELL);
		double[] bounds = outline.bounds();
		double cells = (bounds[2] - bounds[0]) / side * ((bounds[3] - bounds[1]) / side);
		if (!(cells < MOST_CELLS)) {
			return RuleOutcome.notApplicable(
					Words.bind(Messages.CoverageGapRule_isTooLargeForCells, input.unit(), RuleWords.metres(side)));
		}
		List<List<int[]>> gaps = new Cells(radio, outline, side, settings.of(METRES)).gaps();
		gaps.removeIf(gap -> gap.size() * side * side < settings.of(AREA));
		List<Finding> findings = new ArrayList<>();
		if (known.isPresent()) {
			for (List<int[]> gap : gaps) {
				findings.add(finding(input, gap, 1, settings, bounds, site, level, true));
			}
		} else if (!gaps.isEmpty()) {
			List<int[]> all = new ArrayList<>();
			gaps.forEach(all::addAll);
			findings.add(finding(input, all, gaps.size(), settings, bounds, site, level, false));
		}
		return RuleOutcome.found(findings);
	}

	private static Polygon around(RadioMap map) {
		double[] xs = new double[map.size()];
		double[] ys = new double[map.size()];
		for (int s = 0; s < xs.length; s++) {
			xs[s] = map.x(s);
			ys[s] = map.y(s);
		}
		return Polygon.around(xs, ys);
	}

	private Finding finding(RuleInput input, List<int[]> gap, int gaps, Settings settings, double[] bounds, String site,
			int level, boolean outlined) {
		double side = settings.of(CELL);
		String siteId = input.map().siteNamed(site).id();
		List<Subject.OfCell> cells = new ArrayList<>();
		double x = 0;
		double y = 0;
		for (int[] cell : gap) {
			Subject.OfCell each = new Subject.OfCell(siteId, site, level, bounds[0] + cell[0] * side,
					bounds[1] + cell[1] * side, side);
			cells.add(each);
			x += (each.x() + side / 2) / gap.size();
			y += (each.y() + side / 2) / gap.size();
		}
		double area = gap.size() * side * side;
		String message = outlined
				? String.format(Locale.ROOT, Messages.CoverageGapRule_aboutMOfAroundLie, area,
						input.unit(), RuleWords.place(x, y), RuleWords.metres(settings.of(METRES)))
				: String.format(Locale.ROOT,
						Messages.CoverageGapRule_aboutMBetweenTheSamples,
						area, input.unit(), Count.of(gaps, "part"), RuleWords.metres(settings.of(METRES)));
		return Finding.of(this).severity(outlined ? Severity.WARNING : Severity.NOTE).message(message).about(cells)
				.figure("area", area, "m²").figure("parts", gaps, "").figure("x", x, "m").figure("y", y, "m").build();
	}
}
