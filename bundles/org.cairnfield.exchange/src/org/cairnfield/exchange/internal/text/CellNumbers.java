package org.cairnfield.exchange.internal.text;

import java.math.BigDecimal;

/** Numbers as survey files write them, read strictly and written with a point whatever the locale. */
public final class CellNumbers {

	/** What {@link #level} answers for a blank cell. */
	public static final int BLANK = Integer.MIN_VALUE;
	/** What {@link #level} answers for a cell that is not a short whole number. */
	public static final int OTHER = Integer.MAX_VALUE;

	private static final int LONGEST = 64;
	/** Numbers of so many digits, and their powers of ten, are doubles without rounding. */
	private static final int EXACT_DIGITS = 15;
	private static final double[] TENS = { 1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13,
			1e14 };

	private CellNumbers() {
	}

	/**
	 * The value of {@code text}, blanks around it ignored, or NaN where it is not a finite decimal number.
	 * Words such as NaN and Infinity, hexadecimal and type letters are no numbers here.
	 */
	public static double parse(String text, boolean decimalComma) {
		String s = text.strip();
		double exact = shortDecimal(s, decimalComma ? ',' : '.');
		if (!Double.isNaN(exact)) {
			return exact;
		}
		int n = s.length();
		if (n == 0 || n > LONGEST) {
			return Double.NaN;
		}
		boolean digit = false;
		char mark = decimalComma ? ',' : '.';
		for (int i = 0; i < n; i++) {
			char c = s.charAt(i);
			if (c >= '0' && c <= '9') {
				digit = true;
			} else if (c != mark && c != '-' && c != '+' && !(digit && (c == 'e' || c == 'E'))) {
				return Double.NaN;
			}
		}
		if (!digit) {
			return Double.NaN;
		}
		try {
			double value = Double.parseDouble(decimalComma ? s.replace(',', '.') : s);
			return Double.isFinite(value) ? value : Double.NaN;
		} catch (NumberFormatException e) {
			return Double.NaN;
		}
	}

	/** Digits with a mark among them, few enough for both parts of the fraction to be exact; otherwise NaN. */
	private static double shortDecimal(String s, char mark) {
		int n = s.length();
		int first = n > 0 && s.charAt(0) == '-' ? 1 : 0;
		if (n == first || n - first > EXACT_DIGITS) {
			return Double.NaN;
		}
		long digits = 0;
		int point = -1;
		for (int i = first; i < n; i++) {
			int d = s.charAt(i) - '0';
			if (d >= 0 && d <= 9) {
				digits = digits * 10 + d;
			} else if (s.charAt(i) == mark && point < 0 && n - first > 1) {
				point = i;
			} else {
				return Double.NaN;
			}
		}
		double value = point < 0 ? digits : digits / TENS[n - 1 - point];
		return first == 1 ? -value : value;
	}

	/** True for a number with a decimal mark between digits: {@code '.'} or {@code ','}. */
	public static boolean hasMark(String text, char mark) {
		return text.indexOf(mark) > 0 && !Double.isNaN(parse(text, mark == ','));
	}

	/** A whole number of at most four digits without any ado, {@link #BLANK}, or {@link #OTHER}. */
	public static int level(String s) {
		int n = s.length();
		if (n == 0) {
			return BLANK;
		}
		int at = s.charAt(0) == '-' ? 1 : 0;
		if (n - at > 4 || n == at) {
			return s.isBlank() ? BLANK : OTHER;
		}
		int value = 0;
		for (int i = at; i < n; i++) {
			int d = s.charAt(i) - '0';
			if (d < 0 || d > 9) {
				return s.isBlank() ? BLANK : OTHER;
			}
			value = value * 10 + d;
		}
		return at == 1 ? -value : value;
	}

	/**
	 * As {@link #level(String)} for bytes of UTF-8, except that a blank cell that is not empty is {@link #OTHER} here.
	 *
	 * @param from first byte; @param to behind the last
	 */
	public static int level(byte[] text, int from, int to) {
		if (from == to) {
			return BLANK;
		}
		int at = text[from] == '-' ? from + 1 : from;
		if (to - at > 4 || to == at) {
			return OTHER;
		}
		int value = 0;
		for (int i = at; i < to; i++) {
			int d = text[i] - '0';
			if (d < 0 || d > 9) {
				return OTHER;
			}
			value = value * 10 + d;
		}
		return at > from ? -value : value;
	}

	/** The shortest decimal text that reads back as {@code value}, without an exponent; finite values only. */
	public static String plain(double value) {
		if (value == Math.rint(value) && Math.abs(value) < 1e15) {
			return value == 0 && 1 / value < 0 ? "-0" : Long.toString((long) value);
		}
		return new BigDecimal(Double.toString(value)).toPlainString();
	}
}
