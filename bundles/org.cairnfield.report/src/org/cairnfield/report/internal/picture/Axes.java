package org.cairnfield.report.internal.picture;

import java.awt.Color;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** Quiet axes and plots: thin light grid, no frame, no ticks, numbers that do not depend on the locale. */
final class Axes {

	/** About so many grid lines: more would be in the way. */
	private static final int INTERVALS = 8;

	/** Half the width of a number may stand out beyond the end of an axis. */
	static final int RIGHT = 26;

	private Axes() {
	}

	/** A number axis from 0; the label, if any, names the unit. */
	static NumberAxis numbers(String label, double high) {
		// An axis without length cannot be drawn.
		return axis(label, high > 0 ? high : 1, 0);
	}

	/** A number axis of counts: none of its numbers has a fraction. */
	static NumberAxis counts(String label, double high) {
		return axis(label, Math.max(1, high), 1);
	}

	private static NumberAxis axis(String label, double high, double leastStep) {
		NumberAxis axis = new NumberAxis(label);
		axis.setRange(0, high);
		double step = Math.max(leastStep, roundStep(high / INTERVALS));
		axis.setTickUnit(new NumberTickUnit(step, PictureLook.format(step < 1 ? "0.####" : "#,##0.#")));
		quieten(axis);
		return axis;
	}

	/** The next of 1, 2, 5, 10, 20 … that is not smaller. */
	private static double roundStep(double step) {
		double power = Math.pow(10, Math.floor(Math.log10(step)));
		for (int factor : new int[] { 1, 2, 5 }) {
			if (factor * power >= step * (1 - 1e-9)) {
				return factor * power;
			}
		}
		return 10 * power;
	}

	static void quieten(Axis axis) {
		axis.setLabelFont(PictureLook.TEXT);
		axis.setLabelPaint(PictureLook.INK);
		axis.setTickLabelFont(PictureLook.SMALL);
		axis.setTickLabelPaint(PictureLook.INK);
		axis.setAxisLineVisible(false);
		axis.setTickMarksVisible(false);
		axis.setLabelInsets(new RectangleInsets(6, 4, 6, 4));
	}

	static void quieten(Plot plot) {
		plot.setBackgroundPaint(Color.WHITE);
		plot.setOutlineVisible(false);
		plot.setInsets(new RectangleInsets(6, 4, 0, RIGHT));
	}

	static XYPlot plot(NumberAxis x, NumberAxis y) {
		XYPlot plot = new XYPlot(null, x, y, null);
		quieten(plot);
		plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
		plot.setDomainGridlinePaint(PictureLook.GRID);
		plot.setRangeGridlinePaint(PictureLook.GRID);
		plot.setDomainGridlineStroke(PictureLook.HAIRLINE);
		plot.setRangeGridlineStroke(PictureLook.HAIRLINE);
		return plot;
	}
}
