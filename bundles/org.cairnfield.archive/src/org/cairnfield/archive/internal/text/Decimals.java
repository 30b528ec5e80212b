package org.cairnfield.archive.internal.text;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers as decimals: the fewest digits that give the same number back, the same in every version of Java, which
 * Double.toString is not.
 */
final class Decimals {

	private static final double[] POWERS = { 1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13,
			1e14,
			1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22 };
	private static final double EXACT = 1L << 53;
	private static final int MOST_DECIMALS = 9;
	/** So many tell any two numbers apart. */
	private static final int MOST_DIGITS = 17;

	private Decimals() {
	}

	/** @param value finite */
	static void write(double value, LineWriter line) {
		for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
			double scaled = Math.rint(value * POWERS[decimals]);
			if (Math.abs(scaled) >= EXACT) {
				break;
			}
			// the division is the one by which the text is read back
			if (scaled / POWERS[decimals] == value) {
				fixed((long) scaled, decimals, line);
				return;
			}
		}
		line.text(shortest(value));
	}

	private static void fixed(long scaled, int decimals, LineWriter line) {
		long power = (long) POWERS[decimals];
		long absolute = Math.abs(scaled);
		if (scaled < 0) {
			line.ascii('-');
		}
		line.number(absolute / power);
		if (decimals > 0) {
			line.ascii('.');
			long rest = absolute % power;
			for (long digit = power / 10; digit > 0; digit /= 10) {
				line.ascii((char) ('0' + rest / digit % 10));
			}
		}
	}

	/** More digits are never further off; as a rule nearly all are needed where it comes to this. */
	private static String shortest(double value) {
		BigDecimal exact = new BigDecimal(value);
		BigDecimal shortest = exact.round(new MathContext(MOST_DIGITS));
		for (int digits = MOST_DIGITS - 1; digits > 0; digits--) {
			BigDecimal shorter = exact.round(new MathContext(digits));
			if (shorter.doubleValue() != value) {
				break;
			}
			shortest = shorter;
		}
		return shortest.stripTrailingZeros().toString();
	}

	/**
	 * The number in some bytes.
	 *
	 * @return NaN where they are none
	 */
	static double parse(byte[] bytes, int from, int to) {
		int at = from;
		boolean negative = at < to && bytes[at] == '-';
		if (negative) {
			at++;
		}
		long digits = 0;
		int count = 0;
		int decimals = -1;
		for (; at < to; at++) {
			byte b = bytes[at];
			if (b >= '0' && b <= '9') {
				digits = digits * 10 + (b - '0');
				count++;
				decimals += decimals >= 0 ? 1 : 0;
			} else if (b == '.' && decimals < 0 && count > 0) {
				decimals = 0;
			} else {
				return slowly(bytes, from, to);
			}
		}
		// up to 15 digits and 10^22 both are exact, and the division rounds once
		if (count == 0 || count > 15 || decimals == 0) {
			return slowly(bytes, from, to);
		}
		double value = decimals > 0 ? digits / POWERS[decimals] : digits;
		return negative && digits != 0 ? -value : value;
	}

	private static double slowly(byte[] bytes, int from, int to) {
		for (int i = from; i < to; i++) {
			// Java's own parser knows more forms than a file of ours has
			if ("0123456789+-.E".indexOf(bytes[i]) < 0) {
				return Double.NaN;
			}
		}
		try {
			double value = to - from > 40 ? Double.NaN : Double.parseDouble(LineReader.text(bytes, from, to));
			return Double.isInfinite(value) ? Double.NaN : value;
		} catch (NumberFormatException e) {
			return Double.NaN;
		}
	}
}
