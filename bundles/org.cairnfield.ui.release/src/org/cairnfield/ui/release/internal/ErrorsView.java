package org.cairnfield.ui.release.internal;

import java.util.List;

import org.cairnfield.core.series.Curve;
import org.cairnfield.core.series.Series;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What share of the test samples is placed within so many metres. */
public final class ErrorsView extends ViewPart implements ReleaseDesk.Listener {

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private LineChart chart;

	@Override
	public void createPartControl(Composite parent) {
		chart = new LineChart(parent, SWT.NONE);
		chart.setName(Messages.ErrorsView_errorDistribution);
		chart.setData("org.cairnfield.id", "errors.chart");
		chart.setEmptyText(Messages.ErrorsView_measureTheMapOrCheck);
		chart.setAxes(Axis.linear(Messages.ErrorsView_error, "m"), Axis.share(Messages.ErrorsView_shareOfTestSamples));
		chart.setStepped(true);
		desk.add(this);
	}

	@Override
	public void deskChanged() {
		List<Series> curves = desk.side().map(SideBySide::ways).orElse(List.<Way>of()).stream()
				.filter(way -> way.errors().n() > 0)
				.map(way -> Curve.distribution(way.name(), way.errors().errorsMetres())).toList();
		chart.setSeries(curves);
	}

	@Override
	public void setFocus() {
		Marked.focus(chart);
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
