package org.cairnfield.ui.review.internal.split;

import java.util.List;

import org.cairnfield.core.series.Series;
import org.cairnfield.curation.split.KDistanceCurve;
import org.cairnfield.ui.charts.Guide;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.charts.Mark;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** The sorted k-distance curve, on which ε is dragged. */
final class CurvePane {

	private final SplitWork work;
	private final LineChart chart;
	private KDistanceCurve shown;

	CurvePane(Composite parent, SplitWork work) {
		this.work = work;
		chart = Marked.id(new LineChart(parent, SWT.NONE), "split.curve");
		chart.setName(Messages.CurvePane_sortedKDistanceCurve);
		chart.setEmptyText(Messages.CurvePane_chooseWhatToSplitThe);
		// each step asks anew and the last answer counts, so that clusters follow the mouse
		chart.onGuideMoved((value, settled) -> work.setEpsilon(value));
		work.onChange(this::show);
	}

	LineChart control() {
		return chart;
	}

	private void show() {
		if (chart.isDisposed()) {
			return;
		}
		KDistanceCurve curve = work.curve();
		if (curve != shown) {
			shown = curve;
			draw(curve);
		}
		if (curve != null) {
			Guide guide = chart.getGuide();
			if (guide == null || guide.value() != work.epsilon()) {
				chart.setGuide(new Guide(false, work.epsilon(), "ε"));
			}
		}
	}

	private void draw(KDistanceCurve curve) {
		if (curve == null) {
			chart.setGuide(null);
			chart.setMarks(List.of());
			chart.setSeries(List.of());
			return;
		}
		double[] distances = curve.ascending();
		double[] shares = new double[distances.length];
		for (int i = 0; i < shares.length; i++) {
			shares[i] = (i + 1.0) / shares.length;
		}
		String name = NLS.bind(Messages.CurvePane_distanceToTheNearest, ordinal(curve.minPts()));
		chart.setAxes(Axis.share(Messages.CurvePane_samplesByThatDistance),
				Axis.linear(name, work.choice().unit()).between(0, Double.NaN));
		chart.setSeries(List.of(new Series(name, shares, distances)));
		chart.setMarks(
				curve.elbowAt().map(at -> List.of(new Mark(shares[at], distances[at], "elbow"))).orElse(List.of()));
	}

	/** Such as "5th". */
	static String ordinal(int n) {
		int last = n % 10;
		String suffix = n % 100 / 10 == 1 ? "th" : last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th";
		return n + suffix;
	}
}
