package org.cairnfield.report.internal.picture;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Objects;
import java.util.Optional;
import org.cairnfield.core.cluster.Kneedle.Knee;
import org.cairnfield.core.series.Series;
import org.cairnfield.core.text.Words;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.DefaultXYDataset;

/** The sorted k-distance curve with its elbow and the ε that was chosen. */
final class KDistancePicture {

	private static final int HEIGHT = 380;

	private final Series curve;
	private final int k;
	private final Optional<Knee> elbow;
	private final double epsilon;
	private final String unit;

	KDistancePicture(Series curve, int k, Optional<Knee> elbow, double epsilon, String unit) {
		if (curve.size() == 0) {
			throw new IllegalArgumentException("a k-distance curve without points");
		}
		if (!(epsilon >= 0 && Double.isFinite(epsilon))) {
			throw new IllegalArgumentException("epsilon must be finite, 0 or more, was " + epsilon);
		}
		this.curve = curve;
		this.k = k;
		this.elbow = Objects.requireNonNull(elbow);
		this.epsilon = epsilon;
		this.unit = unit;
	}

	String svg(String source) {
		double samples = curve.x(curve.size() - 1);
		double highest = Math.max(curve.y(curve.size() - 1), epsilon);
		NumberAxis x = Axes.counts(Messages.KDistancePicture_samplesInOrderOfThat, samples);
		NumberAxis y = Axes.numbers(null, 1.06 * highest);
		XYPlot plot = Axes.plot(x, y);
		DefaultXYDataset data = new DefaultXYDataset();
		data.addSeries(curve.name(), new double[][] { curve.xs(), curve.ys() });
		plot.setDataset(data);
		XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
		renderer.setSeriesPaint(0, PictureLook.ACCENT);
		renderer.setSeriesStroke(0, PictureLook.LINE);
		renderer.setDrawSeriesLineAsPath(true);
		plot.setRenderer(renderer);

		Page page = new Page(Page.AXIS_NAME + HEIGHT,
				Words.bind(Messages.KDistancePicture_distanceToTheSampleSorted, nearest(k)), source);
		page.axisName(Words.bind(Messages.KDistancePicture_distance, unit));
		Rectangle2D area = page.chart(plot, HEIGHT);
		double epsilonY = y.valueToJava2D(epsilon, area, RectangleEdge.LEFT);
		drawEpsilon(page, area, epsilonY);
		elbow.ifPresent(knee -> drawElbow(page, area, x.valueToJava2D(knee.x(), area, RectangleEdge.BOTTOM),
				y.valueToJava2D(knee.y(), area, RectangleEdge.LEFT), epsilonY));
		return page.svg(description());
	}

	private void drawEpsilon(Page page, Rectangle2D area, double at) {
		page.graphics().setColor(PictureLook.colour(1));
		page.graphics().setStroke(PictureLook.DASHED);
		page.graphics().draw(new Line2D.Double(area.getMinX(), at, area.getMaxX(), at));
		// The curve is below the line on the left and above it on the right: write on the side with room.
		double width = page.graphics().getFontMetrics(PictureLook.TEXT).stringWidth(epsilonText());
		double crossing = area.getMinX() + (1 - shareAbove()) * area.getWidth();
		if (crossing < area.getMinX() + width + 24 && at + 24 < area.getMaxY()) {
			page.textOnWhite(epsilonText(), area.getMaxX() - 8 - width, at + 18, PictureLook.TEXT);
		} else {
			page.textOnWhite(epsilonText(), area.getMinX() + 8, at - 8, PictureLook.TEXT);
		}
	}

	private void drawElbow(Page page, Rectangle2D area, double x, double y, double epsilonY) {
		AffineTransform there = AffineTransform.getTranslateInstance(x, y);
		page.graphics().setColor(Color.WHITE);
		page.graphics().fill(there.createTransformedShape(PictureLook.diamond(7)));
		page.graphics().setColor(PictureLook.INK);
		page.graphics().setStroke(PictureLook.LINE);
		page.graphics().draw(there.createTransformedShape(PictureLook.diamond(7)));
		String text = elbowText();
		double baseline = y - 12;
		if (Math.abs(baseline - (epsilonY - 8)) < 20) {
			// Would run into the other label: one line higher.
			baseline = epsilonY - 28;
		}
		FontMetrics metrics = page.graphics().getFontMetrics(PictureLook.TEXT);
		page.textOnWhite(text, Math.max(area.getMinX() + 8, x - 14 - metrics.stringWidth(text)), baseline,
				PictureLook.TEXT);
	}

	private String epsilonText() {
		return Words.bind(Messages.KDistancePicture_chosenExceededByOfThe, PictureLook.figure(epsilon), unit,
				PictureLook.percent(shareAbove()));
	}

	private String elbowText() {
		return Words.bind(Messages.KDistancePicture_elbowAt, PictureLook.figure(elbow.orElseThrow().y()), unit);
	}

	private String description() {
		return Words.bind(Messages.KDistancePicture_fromToOverSamples, PictureLook.figure(curve.y(0)),
				PictureLook.figure(curve.y(curve.size() - 1)), unit,
				PictureLook.count(Math.round(curve.x(curve.size() - 1))), epsilonText(),
				elbow.isPresent() ? elbowText() : Messages.KDistancePicture_noElbow);
	}

	private double shareAbove() {
		double within = 0;
		for (int i = 0; i < curve.size() && curve.y(i) <= epsilon; i++) {
			within = curve.x(i);
		}
		return 1 - within / curve.x(curve.size() - 1);
	}

	private static String nearest(int k) {
		if (k == 1) {
			return "nearest";
		}
		boolean teens = k % 100 >= 11 && k % 100 <= 13;
		return Words.bind(Messages.KDistancePicture_nearest, k, teens ? "th" : switch (k % 10) {
		case 1 -> "st";
		case 2 -> "nd";
		case 3 -> "rd";
		default -> "th";
		});
	}
}
