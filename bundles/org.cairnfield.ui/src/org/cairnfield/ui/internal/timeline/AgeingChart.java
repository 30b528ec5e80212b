package org.cairnfield.ui.internal.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.series.Series;
import org.cairnfield.curation.timeline.AgeingRow;
import org.cairnfield.curation.timeline.SurveyError;
import org.cairnfield.curation.timeline.TimelineStep;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.charts.Mark;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Errors over time: of the map before each survey, of the first survey's map, and of releases. */
final class AgeingChart {

	private final LineChart chart;
	private TimelineStudy shown;

	AgeingChart(Composite parent) {
		chart = Marked.id(new LineChart(parent, SWT.BORDER), "timeline.ageing");
		chart.setName("Error over time");
		chart.setEmptyText("How far off older maps are on each later survey.");
	}

	void show(TimelineStudy study) {
		if (study == shown) {
			return;
		}
		shown = study;
		LocalDate start = study == null || study.timeline().steps().isEmpty() ? LocalDate.EPOCH : study.timeline().steps().get(0).date();
		chart.setAxes(Axis.linear("Months since " + start, ""), Axis.linear("Mean error", "m").between(0, Double.NaN));
		chart.setSeries(study == null ? List.of() : series(study, start));
		chart.setMarks(study == null ? List.of() : marks(study, start));
	}

	private static List<Series> series(TimelineStudy study, LocalDate start) {
		List<TimelineStep> steps = study.timeline().steps();
		List<Series> all = new ArrayList<>();
		List<LocalDate> days = steps.stream().map(TimelineStep::date).toList();
		add(all, "surveys of the date before", start, days, steps.stream().map(TimelineStep::error).toList());
		add(all, "first survey", start, days, study.first());
		Map<String, List<AgeingRow>> releases = new LinkedHashMap<>();
		study.aged().forEach(row -> releases.computeIfAbsent(row.map(), map -> new ArrayList<>()).add(row));
		releases.forEach((map, rows) -> add(all, "release " + map, start, rows.stream().map(AgeingRow::date).toList(), rows.stream().map(AgeingRow::error).toList()));
		return all;
	}

	private static void add(List<Series> all, String name, LocalDate start, List<LocalDate> days, List<SurveyError> errors) {
		List<double[]> points = new ArrayList<>();
		for (int i = 0; i < days.size(); i++) {
			if (errors.get(i).isKnown()) {
				points.add(new double[] { months(start, days.get(i)), errors.get(i).metres() });
			}
		}
		if (!points.isEmpty()) {
			all.add(new Series(name, points.stream().mapToDouble(point -> point[0]).toArray(), points.stream().mapToDouble(point -> point[1]).toArray()));
		}
	}

	private static List<Mark> marks(TimelineStudy study, LocalDate start) {
		return study.timeline().steps().stream().filter(step -> step.isChanged() && step.error().isKnown())
				.map(step -> new Mark(months(start, step.date()), step.error().metres(), step.date().toString()))
				.toList();
	}

	/** Of a twelfth of a year each. */
	private static double months(LocalDate start, LocalDate day) {
		return ChronoUnit.DAYS.between(start, day) / (365.25 / 12);
	}
}
