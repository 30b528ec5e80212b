package org.cairnfield.ui.charts.scale;

/** From values to fractions of a length, 0 at the low end and 1 at the high end, and back; linear or logarithmic. */
public final class Scale {

	private final double low;
	private final double high;
	private final boolean log;

	private Scale(double low, double high, boolean log) {
		if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
			throw new IllegalArgumentException("no scale from " + low + " to " + high);
		}
		this.low = low;
		this.high = high;
		this.log = log;
	}

	/**
	 * A range of one value is widened around it.
	 *
	 * @throws IllegalArgumentException where the ends are not finite or the wrong way round
	 */
	public static Scale linear(double low, double high) {
		if (low == high) {
			double half = low == 0 ? 0.5 : Math.abs(low) * 0.1;
			return new Scale(low - half, high + half, false);
		}
		return new Scale(low, high, false);
	}

	/**
	 * A range of one value is widened around it.
	 *
	 * @throws IllegalArgumentException where an end is not positive or not finite, or they are the wrong way round
	 */
	public static Scale logarithmic(double low, double high) {
		if (low <= 0) {
			throw new IllegalArgumentException("no logarithmic scale from " + low);
		}
		return low == high ? new Scale(low / 2, high * 2, true) : new Scale(low, high, true);
	}

	/** The value at fraction 0. */
	public double low() {
		return low;
	}

	/** The value at fraction 1. */
	public double high() {
		return high;
	}

	/** Below 0 or above 1 where the value lies outside; NaN for NaN, and on a logarithmic scale for what is not positive. */
	public double fraction(double value) {
		if (!log) {
			return (value - low) / (high - low);
		}
		return value > 0 ? Math.log(value / low) / Math.log(high / low) : Double.NaN;
	}

	/** The fraction, but 0 to 1. */
	public double clamped(double value) {
		return Math.max(0, Math.min(1, fraction(value)));
	}

	/** The inverse of {@link #fraction}. */
	public double value(double fraction) {
		return log ? low * Math.pow(high / low, fraction) : low + fraction * (high - low);
	}

	/** Round values on this scale, at most about {@code most}. */
	public Ticks ticks(int most) {
		return log ? Ticks.logarithmic(low, high, most) : Ticks.linear(low, high, most);
	}

	/** A linear scale that reaches out to the next ticks, so that no value lies on the rim; a logarithmic one as it is. */
	public Scale widened(int most) {
		Scale scale = this;
		// a wider range may need a wider step, and that a still wider range
		for (Scale next = once(most); next != scale; next = scale.once(most)) {
			scale = next;
		}
		return scale;
	}

	private Scale once(int most) {
		Ticks ticks = ticks(most);
		if (log || ticks.size() < 2) {
			return this;
		}
		double step = ticks.value(1) - ticks.value(0);
		double first = ticks.value(0);
		double last = ticks.value(ticks.size() - 1);
		boolean lower = low < first - step * 1e-9;
		boolean higher = high > last + step * 1e-9;
		return lower || higher ? new Scale(lower ? first - step : low, higher ? last + step : high, false) : this;
	}
}
