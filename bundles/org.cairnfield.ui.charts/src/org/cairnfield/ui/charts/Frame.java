package org.cairnfield.ui.charts;

import java.util.List;

import org.cairnfield.core.series.Series;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.charts.scale.Scale;
import org.cairnfield.ui.charts.scale.Ticks;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Where a plot and its two scales lie, and which value is where.
 *
 * @param plot inside the axes
 * @param x    scale of shown values, left to right
 * @param y    scale of shown values, bottom to top
 */
record Frame(Rectangle plot, Scale x, Scale y, Ticks xTicks, Ticks yTicks) {

	/** Sizes that a frame leaves room for. */
	record Measures(int width, int height, int line, int gap, int digit, int legend) {
	}

	/** Least and greatest of the data along both axes, not yet multiplied by the factor of the axis; NaN for no data. */
	record Extent(double lowX, double highX, double lowY, double highY) {

		static Extent of(List<Series> series, Axis xAxis, Axis yAxis) {
			Span x = new Span(xAxis.logarithmic());
			Span y = new Span(yAxis.logarithmic());
			for (Series line : series) {
				for (int i = 0; i < line.size(); i++) {
					x.add(line.x(i));
					y.add(line.y(i));
				}
			}
			return new Extent(x.low(), x.high(), y.low(), y.high());
		}

		/** Reaches out to the guide, which must never be out of reach. */
		Extent with(Guide guide) {
			double at = guide.value();
			return guide.upright() ? new Extent(Math.min(lowX, at), Math.max(highX, at), lowY, highY)
					: new Extent(lowX, highX, Math.min(lowY, at), Math.max(highY, at));
		}
	}

	/** Legend and heading of y above, tick labels left and below, heading of x at the bottom. */
	static Frame fit(Measures m, Axis xAxis, Axis yAxis, Extent data) {
		int top = m.gap + m.legend + (m.legend > 0 ? m.gap : 0) + m.line + m.gap / 2;
		int bottom = m.height - 2 * m.line - 2 * m.gap;
		int high = Math.max(1, bottom - top);
		Scale y = yAxis.scale(data.lowY, data.highY, Math.max(2, high * 5 / (8 * m.line)));
		Ticks yTicks = y.ticks(Math.max(2, high * 5 / (8 * m.line)));
		int left = 2 * m.gap + longest(yTicks) * m.digit;
		int wide = Math.max(1, m.width - left - 2 * m.gap);
		// how long labels are depends on how many there are: begin with few
		Scale x = xAxis.scale(data.lowX, data.highX, 4);
		int most = Math.max(2, wide / ((longest(x.ticks(4)) + 3) * m.digit));
		x = xAxis.scale(data.lowX, data.highX, most);
		return new Frame(new Rectangle(left, top, wide, high), x, y, x.ticks(most), yTicks);
	}

	private static int longest(Ticks ticks) {
		int longest = 1;
		for (int t = 0; t < ticks.size(); t++) {
			longest = Math.max(longest, ticks.label(t).length());
		}
		return longest;
	}

	/** Where a shown value lies. */
	double xOf(double shown) {
		return plot.x + x.fraction(shown) * plot.width;
	}

	double yOf(double shown) {
		return plot.y + (1 - y.fraction(shown)) * plot.height;
	}

	/** The shown value at a place, kept on the scale. */
	double xAt(double place) {
		return x.value(Math.max(0, Math.min(1, (place - plot.x) / plot.width)));
	}

	double yAt(double place) {
		return y.value(Math.max(0, Math.min(1, 1 - (place - plot.y) / plot.height)));
	}

	/** A shown value moved by so many pixels, or by the least that its readout shows, and kept on the scale. */
	double moved(boolean alongX, double shown, int pixels) {
		Scale scale = alongX ? x : y;
		double unit = Math.pow(10, -(alongX ? xTicks : yTicks).readoutDecimals());
		double fraction = scale.fraction(shown) + pixels / (double) (alongX ? plot.width : plot.height);
		double moved = scale.value(Math.max(0, Math.min(1, fraction)));
		double rounded = Math.rint(moved / unit) * unit;
		if (pixels != 0 && Math.abs(rounded - shown) < unit / 2) {
			rounded = Math.rint(shown / unit) * unit + Math.signum(pixels) * unit;
		}
		return Math.max(scale.low(), Math.min(scale.high(), rounded));
	}
}
