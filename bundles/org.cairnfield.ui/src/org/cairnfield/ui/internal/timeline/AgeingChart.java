package org.cairnfield.ui.internal.timeline;

import java.util.List;

import org.cairnfield.curation.timeline.AgeingCurves;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.charts.Mark;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Errors over time: of the map before each survey, of the first survey's map, and of releases. */
final class AgeingChart {

	private final LineChart chart;
	private TimelineStudy shown;

	AgeingChart(Composite parent) {
		chart = Marked.id(new LineChart(parent, SWT.BORDER), "timeline.ageing");
		chart.setName(Messages.AgeingChart_errorOverTime);
		chart.setEmptyText(Messages.AgeingChart_howFarOffOlderMaps);
	}

	void show(TimelineStudy study) {
		if (study == shown) {
			return;
		}
		shown = study;
		if (study == null) {
			chart.setSeries(List.of());
			chart.setMarks(List.of());
			return;
		}
		AgeingCurves curves = AgeingCurves.of(study);
		chart.setAxes(Axis.linear(NLS.bind(Messages.AgeingChart_monthsSince, curves.start()), ""),
				Axis.linear(Messages.AgeingChart_meanError, "m").between(0, Double.NaN));
		chart.setSeries(curves.curves());
		chart.setMarks(curves.changes().stream()
				.map(change -> new Mark(change.months(), change.metres(), change.day().toString())).toList());
	}
}
