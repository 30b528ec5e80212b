package org.cairnfield.ui.charts.scale;

import java.util.Locale;

/** Numbers as text, the same in every locale: a real minus, and a space that does not break before the unit. */
public final class ShownNumbers {

	private static final char MINUS = '\u2212';
	private static final char NO_BREAK_SPACE = '\u00a0';

	private ShownNumbers() {
	}

	/**
	 * @param decimals at least 0
	 * @return such as "−70.5" or "20,000"; a dash for NaN
	 */
	public static String text(double value, int decimals) {
		if (Double.isNaN(value)) {
			return "\u2013";
		}
		if (Double.isInfinite(value)) {
			return (value < 0 ? MINUS : "") + "\u221e";
		}
		String digits = String.format(Locale.ROOT, "%,." + decimals + 'f', Math.abs(value));
		boolean zero = digits.chars().allMatch(c -> c == '0' || c == '.');
		return value < 0 && !zero ? MINUS + digits : digits;
	}

	/** As {@link #text(double, int)} with a unit, such as "−70 dBm"; an empty unit adds nothing. */
	public static String text(double value, int decimals, String unit) {
		String number = text(value, decimals);
		return unit.isEmpty() ? number : number + NO_BREAK_SPACE + unit;
	}
}
