package org.cairnfield.ui.release.internal.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Series;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.ui.charts.DotChart;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Error over match time, a dot a method; and how large clusters are before and after noise is given back, and among components. */
final class StudyCharts {

	private static final List<StudyMethod> DRAWN = List.of(StudyMethod.DBSCAN, StudyMethod.DBSCAN_CORRELATION,
			StudyMethod.DBSCAN_NEAREST, StudyMethod.DBSCAN_PCA);
	/** Kinds of dots. */
	private static final List<String> FAMILIES = List.of("plain", "DBSCAN", "k-means", "others", "chosen");

	private final DotChart dots;
	private final LineChart sizes;

	StudyCharts(Composite parent) {
		SashForm charts = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
		dots = Marked.id(new DotChart(charts, SWT.BORDER), "study.dots");
		dots.setName(Messages.StudyCharts_errorAndMatchTime);
		dots.setEmptyText(Messages.StudyCharts_errorOverMatchTimeA);
		dots.setAxes(Axis.logarithmic(Messages.StudyCharts_matchTimeToPlain, ""),
				Axis.linear(Messages.StudyCharts_meanErrorToPlain, ""));
		sizes = Marked.id(new LineChart(charts, SWT.BORDER), "study.sizes");
		sizes.setName(Messages.StudyCharts_clusterSizes);
		sizes.setAxes(Axis.logarithmic(Messages.StudyCharts_clusterLargestFirst, ""),
				Axis.logarithmic(Messages.StudyCharts_samples, ""));
		charts.setWeights(60, 40);
	}

	/** @param map its name; null for the means over all */
	void show(StudyTable study, String map) {
		dots.setDots(study == null ? List.of() : map == null ? means(study) : ofMap(study, map), FAMILIES);
		sizes.setEmptyText(map == null ? Messages.StudyCharts_chooseAMapToSee : Messages.StudyCharts_noSplitOfThisMap);
		sizes.setSeries(study == null || map == null ? List.of() : sizes(study, map));
	}

	private static List<DotChart.Dot> means(StudyTable study) {
		return study.averages().stream().map(mean -> new DotChart.Dot(mean.matchTime().value(), mean.toPlain().value(),
				mean.method(), family(mean.method()))).toList();
	}

	private static List<DotChart.Dot> ofMap(StudyTable study, String map) {
		return study.of(map).stream().filter(StudyRow::isMeasured)
				.map(row -> new DotChart.Dot(row.figures().matchTimeRatio(), row.figures().toPlain(), row.method(),
						family(row.method())))
				.toList();
	}

	private static int family(String method) {
		return switch (StudyMethod.of(method)) {
		case PLAIN, PLAIN_3W -> 0;
		case DBSCAN, DBSCAN_CORRELATION, DBSCAN_NEAREST, DBSCAN_PCA -> 1;
		case K_MEANS, K_MEANS_OVERLAP -> 2;
		case CHOSEN -> 4;
		default -> 3;
		};
	}

	private static List<Series> sizes(StudyTable study, String map) {
		List<Series> series = new ArrayList<>();
		for (StudyMethod method : DRAWN) {
			study.row(map, method).filter(row -> row.shape() != null)
					.ifPresent(row -> series
							.add(new Series(NLS.bind(Messages.StudyCharts_noise, method.code(), row.shape().noise()),
									IntStream.rangeClosed(1, row.shape().sizes().size()).asDoubleStream().toArray(),
									row.shape().sizes().stream().mapToDouble(Integer::doubleValue).toArray())));
		}
		return series;
	}
}
