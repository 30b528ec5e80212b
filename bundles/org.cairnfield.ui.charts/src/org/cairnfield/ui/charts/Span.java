package org.cairnfield.ui.charts;

/** Collects least and greatest of what can be drawn; NaN where there was nothing. */
final class Span {

	private final boolean positiveOnly;
	private double low = Double.NaN;
	private double high = Double.NaN;

	Span(boolean positiveOnly) {
		this.positiveOnly = positiveOnly;
	}

	void add(double value) {
		if (Double.isFinite(value) && (value > 0 || !positiveOnly)) {
			low = low <= value ? low : value;
			high = high >= value ? high : value;
		}
	}

	double low() {
		return low;
	}

	double high() {
		return high;
	}
}
