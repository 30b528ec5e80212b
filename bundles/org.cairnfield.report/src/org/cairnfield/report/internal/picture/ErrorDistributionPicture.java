package org.cairnfield.report.internal.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.cairnfield.core.series.Series;
import org.cairnfield.core.stats.Percentile;
import org.cairnfield.core.text.Words;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.DefaultXYDataset;

/** Cumulative curves of position errors, markers where they reach 50, 75 and 95 %, and a table as their key. */
final class ErrorDistributionPicture {

	private static final int HEIGHT = 360;
	private static final int ROW = 22;
	private static final int[] RIGHT_EDGES = { 400, 490, 580, 670, 740 };
	private static final String[] HEADS = { "n", "50 %", "75 %", "95 %", "largest" };
	/** In 95th percentiles. A picture that reached to one stray error of 300 m would show nothing else. */
	private static final double LONGEST = 2;

	private static final double[] MARKED = { 0.50, 0.75, 0.95 };

	private final List<ErrorCurve> curves;

	ErrorDistributionPicture(List<ErrorCurve> curves) {
		if (curves.isEmpty()) {
			throw new IllegalArgumentException("no curves to draw");
		}
		this.curves = List.copyOf(curves);
	}

	String svg(String source) {
		double end = end();
		NumberAxis x = Axes.numbers(Messages.ErrorDistributionPicture_horizontalErrorM, end);
		NumberAxis y = Axes.numbers(null, 102);
		y.setTickUnit(new NumberTickUnit(25, PictureLook.format("0")));
		XYPlot plot = Axes.plot(x, y);
		plot.setDataset(data());
		plot.setRenderer(lines());
		int body = Page.AXIS_NAME + HEIGHT + (curves.size() + 1) * ROW + 16;
		Page page = new Page(body, Messages.ErrorDistributionPicture_horizontalPositionErrors, caption(source, end));
		page.axisName(Messages.ErrorDistributionPicture_shareOfPositionsWithin);
		Rectangle2D area = page.chart(plot, HEIGHT);
		for (int c = 0; c < curves.size(); c++) {
			for (double share : MARKED) {
				double at = curves.get(c).metresAt(share);
				if (at <= end) {
					drawMarker(page.graphics(), c, x.valueToJava2D(at, area, RectangleEdge.BOTTOM),
							y.valueToJava2D(100 * share, area, RectangleEdge.LEFT));
				}
			}
		}
		drawKey(page);
		return page.svg(description());
	}

	private double end() {
		double p95 = curves.stream().mapToDouble(ErrorCurve::p95Metres).max().getAsDouble();
		double max = curves.stream().mapToDouble(ErrorCurve::maxMetres).max().getAsDouble();
		// With most errors at 0 there is no percentile to go by.
		return p95 > 0 && max > LONGEST * p95 ? LONGEST * p95 : 1.02 * max;
	}

	private String caption(String source, double end) {
		double beyond = curves.stream().mapToDouble(curve -> curve.shareBeyond(end)).max().getAsDouble();
		return Words.bind(Messages.ErrorDistributionPicture_percentilesBy, source, Percentile.RULE.title(),
				beyond > 0
						? Words.bind(Messages.ErrorDistributionPicture_cutAtBeyondWhichAre, PictureLook.metres(end),
								PictureLook.percent(beyond))
						: "");
	}

	private String name(ErrorCurve curve) {
		return curve.distribution().name();
	}

	private DefaultXYDataset data() {
		DefaultXYDataset data = new DefaultXYDataset();
		for (int c = 0; c < curves.size(); c++) {
			// By number: two curves may have the same name.
			data.addSeries(c, steps(curves.get(c).distribution()));
		}
		return data;
	}

	/** Across, then up, to each point; as one path, so that dashes run on. */
	private static double[][] steps(Series series) {
		int points = 2 * series.size() - 1;
		double[][] steps = new double[2][points];
		for (int i = 0; i < points; i++) {
			steps[0][i] = series.x((i + 1) / 2);
			steps[1][i] = 100 * series.y(i / 2);
		}
		return steps;
	}

	private XYLineAndShapeRenderer lines() {
		XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
		lines.setDrawSeriesLineAsPath(true);
		for (int c = 0; c < curves.size(); c++) {
			lines.setSeriesPaint(c, PictureLook.colour(c));
			lines.setSeriesStroke(c, PictureLook.line(c));
		}
		return lines;
	}

	private static void drawMarker(Graphics2D graphics, int curve, double x, double y) {
		AffineTransform there = AffineTransform.getTranslateInstance(x, y);
		graphics.setColor(Color.WHITE);
		graphics.fill(there.createTransformedShape(PictureLook.marker(curve)));
		graphics.setColor(PictureLook.colour(curve));
		graphics.setStroke(PictureLook.LINE);
		graphics.draw(there.createTransformedShape(PictureLook.marker(curve)));
	}

	private void drawKey(Page page) {
		page.skip(18);
		for (int i = 0; i < HEADS.length; i++) {
			page.textEndingAt(HEADS[i], RIGHT_EDGES[i], page.y(), PictureLook.SMALL, PictureLook.QUIET);
		}
		for (int c = 0; c < curves.size(); c++) {
			page.skip(ROW);
			ErrorCurve curve = curves.get(c);
			page.graphics().setColor(PictureLook.colour(c));
			page.graphics().setStroke(PictureLook.line(c));
			page.graphics().draw(new Line2D.Double(Page.MARGIN, page.y() - 4.5, Page.MARGIN + 52, page.y() - 4.5));
			drawMarker(page.graphics(), c, Page.MARGIN + 26, page.y() - 4.5);
			page.text(page.fitted(name(curve), 270, PictureLook.TEXT), Page.MARGIN + 62, page.y(), PictureLook.TEXT,
					PictureLook.INK);
			String[] figures = { PictureLook.count(curve.n()), PictureLook.metres(curve.medianMetres()),
					PictureLook.metres(curve.p75Metres()),
					PictureLook.metres(curve.p95Metres()), PictureLook.metres(curve.maxMetres()) };
			for (int i = 0; i < figures.length; i++) {
				page.textEndingAt(figures[i], RIGHT_EDGES[i], page.y(), PictureLook.TEXT, PictureLook.INK);
			}
		}
	}

	private String description() {
		return curves.stream()
				.map(curve -> String.format(Locale.ROOT, Messages.ErrorDistributionPicture_halfWithin95WithinLargest,
						name(curve),
						PictureLook.metres(curve.medianMetres()), PictureLook.metres(curve.p95Metres()),
						PictureLook.metres(curve.maxMetres()),
						PictureLook.count(curve.n())))
				.collect(Collectors.joining("; ", "", "."));
	}
}
