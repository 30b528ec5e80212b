package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.series.Series;
import org.cairnfield.core.text.Words;

/**
 * Errors over time, for a chart.
 *
 * @param start   day of the first survey
 * @param curves  x in months since then, y in metres: maps of the date before each survey, of the first survey, of releases
 * @param changes surveys that tell of a change
 */
public record AgeingCurves(LocalDate start, List<Series> curves, List<Change> changes) {

	private static final double DAYS_A_MONTH = 365.25 / 12;

	/** A survey that tells of a change: when, and how far off the map before was. */
	public record Change(LocalDate day, double months, double metres) {
	}

	public AgeingCurves {
		curves = List.copyOf(curves);
		changes = List.copyOf(changes);
	}

	/** Of all that is known of a site. */
	public static AgeingCurves of(TimelineStudy study) {
		List<TimelineStep> steps = study.timeline().steps();
		LocalDate start = steps.isEmpty() ? LocalDate.EPOCH : steps.get(0).date();
		List<LocalDate> days = steps.stream().map(TimelineStep::date).toList();
		List<Series> curves = new ArrayList<>();
		add(curves, Messages.AgeingCurves_surveysOfTheDateBefore, start, days,
				steps.stream().map(TimelineStep::error).toList());
		add(curves, Messages.AgeingCurves_firstSurvey, start, days, study.first());
		Map<String, List<AgeingRow>> releases = new LinkedHashMap<>();
		study.aged().forEach(row -> releases.computeIfAbsent(row.map(), map -> new ArrayList<>()).add(row));
		releases.forEach(
				(map, rows) -> add(curves, Words.bind(Messages.AgeingCurves_release, map), start,
						rows.stream().map(AgeingRow::date).toList(),
						rows.stream().map(AgeingRow::error).toList()));
		return new AgeingCurves(start, curves, steps.stream().filter(step -> step.isChanged() && step.error().isKnown())
				.map(step -> new Change(step.date(), months(start, step.date()), step.error().metres())).toList());
	}

	private static void add(List<Series> curves, String name, LocalDate start, List<LocalDate> days,
			List<SurveyError> errors) {
		List<double[]> points = new ArrayList<>();
		for (int i = 0; i < days.size(); i++) {
			if (errors.get(i).isKnown()) {
				points.add(new double[] { months(start, days.get(i)), errors.get(i).metres() });
			}
		}
		if (!points.isEmpty()) {
			curves.add(new Series(name, points.stream().mapToDouble(point -> point[0]).toArray(),
					points.stream().mapToDouble(point -> point[1]).toArray()));
		}
	}

	private static double months(LocalDate start, LocalDate day) {
		return ChronoUnit.DAYS.between(start, day) / DAYS_A_MONTH;
	}
}
