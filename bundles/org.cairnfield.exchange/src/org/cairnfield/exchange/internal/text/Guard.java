package org.cairnfield.exchange.internal.text;

/**
 * Keeps a text field from being run as a formula when a table is opened in a spreadsheet (CWE-1236): a
 * text that starts with = + - @ TAB or CR gets a leading apostrophe. Texts that already start with
 * apostrophes before such a sign get one more, so that {@link #off} undoes {@link #on} for every text.
 * Numbers are left alone.
 */
public final class Guard {

	private Guard() {
	}

	/** The text as it is written. */
	public static String on(String text) {
		return risky(text) && Double.isNaN(CellNumbers.parse(text, false)) ? "'" + text : text;
	}

	/** The text as it was before {@link #on}. */
	public static String off(String text) {
		return !text.isEmpty() && text.charAt(0) == '\'' && risky(text) ? text.substring(1) : text;
	}

	private static boolean risky(String text) {
		for (int i = 0; i < text.length(); i++) {
			switch (text.charAt(i)) {
			case '\'':
				break;
			case '=', '+', '-', '@', '\t', '\r':
				return true;
			default:
				return false;
			}
		}
		return false;
	}
}
