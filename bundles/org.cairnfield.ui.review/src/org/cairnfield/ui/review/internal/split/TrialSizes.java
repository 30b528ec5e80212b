package org.cairnfield.ui.review.internal.split;

import org.cairnfield.curation.split.Trial;
import org.cairnfield.ui.charts.BarChart;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Sizes of the clusters that the present ε and minPts make. */
final class TrialSizes {

	/** More bars would be a wall. */
	private static final int MOST_BARS = 40;

	private final SplitWork work;
	private final BarChart chart;
	private Trial shown;

	TrialSizes(Composite parent, SplitWork work, String id, String name) {
		this.work = work;
		chart = Marked.id(new BarChart(parent, SWT.NONE), id);
		chart.setName(name);
		chart.setEmptyText(Messages.TrialSizes_clusterSizesAppearHereOnce);
		work.onChange(this::show);
		show();
	}

	BarChart control() {
		return chart;
	}

	private void show() {
		Trial trial = work.trial();
		if (chart.isDisposed() || trial == shown) {
			return;
		}
		shown = trial;
		ClusterBars bars = trial == null ? ClusterBars.NONE
				: ClusterBars.of(MOST_BARS, new ClusterBars.State("samples", trial.sizes(), trial.noise()));
		chart.setBars(bars.bars(), Axis.linear(Messages.TrialSizes_samples, ""), 0);
		chart.setHollow(place -> place == bars.noisePlace());
	}
}
