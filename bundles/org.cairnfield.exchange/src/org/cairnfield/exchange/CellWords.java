package org.cairnfield.exchange;

import java.util.Locale;

/** Characters that a person would rather read as words. */
final class CellWords {

	private CellWords() {
	}

	static String separator(char c) {
		switch (c) {
		case ',':
			return "comma";
		case ';':
			return "semicolon";
		case '\t':
			return "tab";
		case ' ':
			return "blank";
		default:
			return String.valueOf(c);
		}
	}

	static char separator(String word) {
		switch (word.toLowerCase(Locale.ROOT)) {
		case "comma":
			return ',';
		case "semicolon":
			return ';';
		case "tab":
			return '\t';
		case "blank":
			return ' ';
		default:
			if (word.length() != 1 || "\"\r\n".contains(word)) {
				throw new IllegalArgumentException("no separator: " + word);
			}
			return word.charAt(0);
		}
	}

	static String decimalMark(char c) {
		return c == ',' ? "comma" : "point";
	}

	static char decimalMark(String word) {
		switch (word.toLowerCase(Locale.ROOT)) {
		case "comma":
			return ',';
		case "point":
			return '.';
		default:
			throw new IllegalArgumentException("point or comma, not " + word);
		}
	}

	/** A cell cut to a length fit for a message. */
	static String shown(String cell) {
		String s = cell.length() > 40 ? cell.substring(0, 40) + "…" : cell;
		return "'" + s.replaceAll("\\p{Cntrl}", "?") + "'";
	}

	static String percent(long part, long whole) {
		double share = whole == 0 ? 0 : 100.0 * part / whole;
		return share > 0 && share < 10 ? String.format(Locale.ROOT, "%.1f %%", share)
				: String.format(Locale.ROOT, "%.0f %%", share);
	}

	static String count(long n) {
		return String.format(Locale.ROOT, "%,d", n);
	}
}
