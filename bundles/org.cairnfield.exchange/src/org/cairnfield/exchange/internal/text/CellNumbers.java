package org.cairnfield.exchange.internal.text;

import java.math.BigDecimal;

/** Numbers as survey files write them, read strictly and written with a point whatever the locale. */
public final class CellNumbers {

	/** What {@link #level} answers for a blank cell. */
	public static final int BLANK = Integer.MIN_VALUE;
	/** What {@link #level} answers for a cell that is not a short whole number. */
	public static final int OTHER = Integer.MAX_VALUE;

	private static final int LONGEST = 64;

	private CellNumbers() {
	}

	/**
	 * The value of {@code text}, blanks around it ignored, or NaN where it is not a finite decimal number.
	 * Words such as NaN and Infinity, hexadecimal and type letters are no numbers here.
	 */
	public static double parse(String text, boolean decimalComma) {
		String s = text.strip();
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

	/** The shortest decimal text that reads back as {@code value}, without an exponent; finite values only. */
	public static String plain(double value) {
		if (value == Math.rint(value) && Math.abs(value) < 1e15) {
			return value == 0 && 1 / value < 0 ? "-0" : Long.toString((long) value);
		}
		return new BigDecimal(Double.toString(value)).toPlainString();
	}
}
