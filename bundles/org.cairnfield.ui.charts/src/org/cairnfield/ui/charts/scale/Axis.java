package org.cairnfield.ui.charts.scale;

import java.util.Objects;

/**
 * What an axis is of.
 *
 * @param title       what is counted or measured
 * @param unit        of the values as shown, may be empty
 * @param factor      shown value per value; 100 for shares shown in per cent
 * @param logarithmic whether equal ratios are equal lengths
 * @param low         the first value on the axis, NaN to follow the data
 * @param high        the last value on the axis, NaN to follow the data
 */
public record Axis(String title, String unit, double factor, boolean logarithmic, double low, double high) {

	public Axis {
		Objects.requireNonNull(title);
		Objects.requireNonNull(unit);
	}

	/** A linear axis over the range of the data. */
	public static Axis linear(String title, String unit) {
		return new Axis(title, unit, 1, false, Double.NaN, Double.NaN);
	}

	/** A logarithmic axis over the range of the data; values that are not positive are not drawn. */
	public static Axis logarithmic(String title, String unit) {
		return new Axis(title, unit, 1, true, Double.NaN, Double.NaN);
	}

	/** For shares from 0 to 1, shown from 0 to 100 %. */
	public static Axis share(String title) {
		return new Axis(title, "%", 100, false, 0, 1);
	}

	/** The same axis with ends of its own, NaN to follow the data at that end. */
	public Axis between(double newLow, double newHigh) {
		return new Axis(title, unit, factor, logarithmic, newLow, newHigh);
	}

	/** Title with unit, such as "Error (m)". */
	public String heading() {
		return unit.isEmpty() ? title : title + " (" + unit + ')';
	}

	/**
	 * A scale of shown values.
	 *
	 * @param dataLow  least value, not yet multiplied by the factor; NaN where there is none
	 * @param dataHigh greatest value
	 * @param ticks    wanted at most; an end that follows the data moves out to the next
	 */
	public Scale scale(double dataLow, double dataHigh, int ticks) {
		double from = Double.isNaN(low) ? dataLow : low;
		double to = Double.isNaN(high) ? dataHigh : high;
		if (Double.isNaN(from) && Double.isNaN(to)) {
			from = logarithmic ? 1 : 0;
			to = logarithmic ? 10 : 1;
		} else if (Double.isNaN(from)) {
			from = to;
		} else if (Double.isNaN(to)) {
			to = from;
		}
		from *= factor;
		to = Math.max(from, to * factor);
		if (logarithmic) {
			return Scale.logarithmic(from, to);
		}
		Scale exact = Scale.linear(from, to);
		Scale wide = exact.widened(ticks);
		return Scale.linear(Double.isNaN(low) ? wide.low() : exact.low(),
				Double.isNaN(high) ? wide.high() : exact.high());
	}

	/** A value with its unit, multiplied by the factor. */
	public String text(double value, int decimals) {
		return ShownNumbers.text(value * factor, decimals, unit);
	}
}
