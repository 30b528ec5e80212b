package org.cairnfield.report.internal.picture;

import java.util.List;

import org.cairnfield.core.series.Series;
import org.cairnfield.core.text.Words;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** Errors of older maps over time, a curve a map. */
final class AgeingPicture {

	private static final int HEIGHT = 300;
	private static final int KEY = 24;
	private static final double ROOM = 1.06;

	private final List<Series> curves;
	private final String start;

	/** @param curves x in months, y in metres; at least one point */
	AgeingPicture(List<Series> curves, String start) {
		if (curves.stream().allMatch(curve -> curve.size() == 0)) {
			throw new IllegalArgumentException("no errors to draw");
		}
		this.curves = curves;
		this.start = start;
	}

	String svg(String source) {
		double months = 0;
		double metres = 0;
		DefaultXYDataset data = new DefaultXYDataset();
		XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
		for (int c = 0; c < curves.size(); c++) {
			Series curve = curves.get(c);
			for (int i = 0; i < curve.size(); i++) {
				months = Math.max(months, curve.x(i));
				metres = Math.max(metres, curve.y(i));
			}
			data.addSeries(curve.name(), new double[][] { curve.xs(), curve.ys() });
			renderer.setSeriesPaint(c, PictureLook.colour(c));
			renderer.setSeriesStroke(c, PictureLook.line(c));
			renderer.setSeriesShape(c, PictureLook.marker(c));
		}
		NumberAxis x = Axes.numbers(Words.bind(Messages.AgeingPicture_monthsSince, start), ROOM * months);
		XYPlot plot = Axes.plot(x, Axes.numbers(null, ROOM * metres));
		plot.setDataset(data);
		plot.setRenderer(renderer);
		Page page = new Page(KEY + Page.AXIS_NAME + HEIGHT, Messages.AgeingPicture_errorOfOlderMapsOn, source);
		key(page);
		page.axisName(Messages.AgeingPicture_meanErrorM);
		page.chart(plot, HEIGHT);
		return page.svg(description());
	}

	private void key(Page page) {
		double x = Page.MARGIN;
		for (int c = 0; c < curves.size(); c++) {
			page.graphics().setColor(PictureLook.colour(c));
			page.graphics().translate(x + 6, page.y() + 9.0);
			page.graphics().fill(PictureLook.marker(c));
			page.graphics().translate(-x - 6, -page.y() - 9.0);
			page.text(curves.get(c).name(), x + 18, page.y() + 14.0, PictureLook.TEXT, PictureLook.INK);
			x += 18 + page.graphics().getFontMetrics(PictureLook.TEXT).stringWidth(curves.get(c).name()) + 24;
		}
		page.skip(KEY);
	}

	private String description() {
		StringBuilder text = new StringBuilder();
		for (Series curve : curves) {
			text.append(curve.name()).append(": ");
			for (int i = 0; i < curve.size(); i++) {
				text.append(i == 0 ? "" : ", ").append(PictureLook.metres(curve.y(i)))
						.append(Messages.AgeingPicture_after)
						.append(PictureLook.figure(curve.x(i))).append(Messages.AgeingPicture_months);
			}
			text.append(". ");
		}
		return text.toString().strip();
	}
}
