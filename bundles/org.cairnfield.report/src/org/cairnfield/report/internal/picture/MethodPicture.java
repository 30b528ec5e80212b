package org.cairnfield.report.internal.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.cairnfield.core.text.Words;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/** Methods by match time and error: a faint mark a map, a strong one on average. */
final class MethodPicture {

	private static final int HEIGHT = 380;
	private static final int KEY_ROW = 21;
	private static final int KEY_GAP = 22;
	private static final int MARK = 18;
	private static final int FAINT = 90;
	private static final double SMALL = 0.6;
	private static final double ROOM = 0.25;
	/** Larger errors stand at the upper edge: one map on which a method fails would press all others together. */
	private static final double LARGEST = 2;

	private final List<MethodPoints> methods;

	MethodPicture(List<MethodPoints> methods) {
		if (methods.isEmpty()) {
			throw new IllegalArgumentException("no methods to draw");
		}
		this.methods = methods;
	}

	String svg(String source) {
		Page measuring = new Page(0, "", "");
		int rows = keyRows(measuring);
		Page page = new Page(rows * KEY_ROW + 8 + Page.AXIS_NAME + HEIGHT,
				Messages.MethodPicture_errorAndMatchTimeBoth, source + beyond());
		key(page, true);
		page.skip(rows * KEY_ROW + 8);
		page.axisName(Messages.MethodPicture_meanErrorToPlainMatching);
		XYPlot plot = Axes.plot(times(), errors());
		Rectangle2D area = page.chart(plot, HEIGHT);
		draw(page.graphics(), plot, area);
		return page.svg(methods.stream()
				.map(m -> Words.bind(Messages.MethodPicture_errorTime, m.method(), PictureLook.figure(m.meanError()),
						PictureLook.figure(m.meanTime())))
				.collect(Collectors.joining("; ", Messages.MethodPicture_toPlainMatchingOnAverage, ".")));
	}

	private int keyRows(Page page) {
		return key(page, false);
	}

	/** Draws the key, or only counts its rows. */
	private int key(Page page, boolean drawn) {
		double x = Page.MARGIN;
		int row = 0;
		for (int m = 0; m < methods.size(); m++) {
			int width = MARK + page.graphics().getFontMetrics(PictureLook.TEXT).stringWidth(methods.get(m).method());
			if (x + width > Page.WIDTH - Page.MARGIN) {
				x = Page.MARGIN;
				row++;
			}
			if (drawn) {
				double baseline = page.y() + 14.0 + row * KEY_ROW;
				mark(page.graphics(), m, x + 6, baseline - 4.5, 1, 255);
				page.text(methods.get(m).method(), x + MARK, baseline, PictureLook.TEXT, PictureLook.INK);
			}
			x += width + KEY_GAP;
		}
		return row + 1;
	}

	/** Halves of the time of plain matching, for what is twice as fast is as far from it as what takes twice as long. */
	private NumberAxis times() {
		double least = 0;
		double most = 0;
		for (MethodPoints method : methods) {
			for (double time : method.times()) {
				least = Math.min(least, halves(time));
				most = Math.max(most, halves(time));
			}
		}
		NumberAxis axis = new NumberAxis(Messages.MethodPicture_matchTimeToPlainMatching);
		Axes.quieten(axis);
		axis.setRange(Math.floor(least) - ROOM, Math.ceil(most) + ROOM);
		axis.setTickUnit(new NumberTickUnit(1, new Halves()));
		return axis;
	}

	private static double halves(double time) {
		return Math.log(time) / Math.log(2);
	}

	private NumberAxis errors() {
		double most = methods.stream().flatMapToDouble(m -> Arrays.stream(m.errors())).max().orElse(1);
		return Axes.numbers(null, Math.min(LARGEST, 1.05 * Math.max(1, most)));
	}

	/** Empty where all errors have their place. */
	private String beyond() {
		long points = methods.stream().flatMapToDouble(m -> Arrays.stream(m.errors())).filter(error -> error > LARGEST)
				.count();
		String means = methods.stream().filter(m -> m.meanError() > LARGEST)
				.map(m -> m.method() + " " + PictureLook.figure(m.meanError())).collect(Collectors.joining(", "));
		return points == 0 ? ""
				: Words.bind(Messages.MethodPicture_errorsAboveStandAtThe, PictureLook.figure(LARGEST), points,
						points == 1 ? Messages.MethodPicture_map : Messages.MethodPicture_maps,
						means.isEmpty() ? "." : Words.bind(Messages.MethodPicture_andOnAverage, means));
	}

	private void draw(Graphics2D graphics, XYPlot plot, Rectangle2D area) {
		for (int m = 0; m < methods.size(); m++) {
			MethodPoints method = methods.get(m);
			for (int i = 0; i < method.times().length; i++) {
				mark(graphics, m, x(plot, area, method.times()[i]), y(plot, area, method.errors()[i]), SMALL, FAINT);
			}
		}
		for (int m = 0; m < methods.size(); m++) {
			MethodPoints method = methods.get(m);
			double x = x(plot, area, method.meanTime());
			graphics.setColor(PictureLook.colour(m));
			graphics.setStroke(PictureLook.LINE);
			graphics.draw(new Line2D.Double(x, y(plot, area, method.low()), x, y(plot, area, method.high())));
			mark(graphics, m, x, y(plot, area, method.meanError()), 1.15, 255);
		}
	}

	private static double x(XYPlot plot, Rectangle2D area, double time) {
		return plot.getDomainAxis().valueToJava2D(halves(time), area, RectangleEdge.BOTTOM);
	}

	private static double y(XYPlot plot, Rectangle2D area, double error) {
		return plot.getRangeAxis().valueToJava2D(Math.min(error, plot.getRangeAxis().getUpperBound()), area,
				RectangleEdge.LEFT);
	}

	private static void mark(Graphics2D graphics, int method, double x, double y, double size, int alpha) {
		Color colour = PictureLook.colour(method);
		AffineTransform there = AffineTransform.getTranslateInstance(x, y);
		there.scale(size, size);
		// after seven colours they begin again; the shapes, which begin again after four, then differ
		Shape shape = there.createTransformedShape(PictureLook.marker(method));
		graphics.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha));
		graphics.fill(shape);
	}

	/** 1, 1/2, 1/4 … and 2, 4 … */
	private static final class Halves extends NumberFormat {

		private static final long serialVersionUID = 1;

		@Override
		public StringBuffer format(double power, StringBuffer to, FieldPosition position) {
			long times = Math.round(Math.pow(2, Math.abs(power)));
			return to.append(power < -0.5 ? "1/" + times : Long.toString(times));
		}

		@Override
		public StringBuffer format(long power, StringBuffer to, FieldPosition position) {
			return format((double) power, to, position);
		}

		@Override
		public Number parse(String text, ParsePosition position) {
			throw new UnsupportedOperationException("an axis only writes");
		}
	}
}
