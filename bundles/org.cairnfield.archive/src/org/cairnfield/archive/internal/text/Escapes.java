package org.cairnfield.archive.internal.text;

/**
 * Any text as a field of a line. A backslash begins an escape: {@code \\}, {@code \t}, {@code \n}, {@code \r}, and
 * {@code \}{@code uXXXX} for what is no character of a line or of XML: control characters, line separators, halves of
 * surrogate pairs. Everything else stands for itself.
 */
public final class Escapes {

	private Escapes() {
	}

	/** Whether a character at a place of a text has to be escaped. */
	private static boolean isSpecial(CharSequence text, int at) {
		char c = text.charAt(at);
		if (c >= ' ' && c < 0x7f) {
			return c == '\\';
		}
		if (Character.isHighSurrogate(c)) {
			return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
		}
		if (Character.isLowSurrogate(c)) {
			return at == 0 || !Character.isHighSurrogate(text.charAt(at - 1));
		}
		return c < ' ' || c < 0xa0 || c == '\u2028' || c == '\u2029' || c >= '\ufffe' || c == '\ufeff';
	}

	/** The text with escapes. */
	public static String escape(String text) {
		for (int i = 0; i < text.length(); i++) {
			if (isSpecial(text, i)) {
				return escapeFrom(text, i);
			}
		}
		return text;
	}

	private static String escapeFrom(String text, int first) {
		StringBuilder escaped = new StringBuilder(text.length() + 8).append(text, 0, first);
		for (int i = first; i < text.length(); i++) {
			char c = text.charAt(i);
			if (!isSpecial(text, i)) {
				escaped.append(c);
				continue;
			}
			switch (c) {
			case '\\' -> escaped.append("\\\\");
			case '\t' -> escaped.append("\\t");
			case '\n' -> escaped.append("\\n");
			case '\r' -> escaped.append("\\r");
			default -> {
				escaped.append("\\u");
				for (int shift = 12; shift >= 0; shift -= 4) {
					escaped.append(Character.forDigit(c >> shift & 0xf, 16));
				}
			}
			}
		}
		return escaped.toString();
	}

	/** @throws IllegalArgumentException for a backslash that begins no escape */
	public static String unescape(String text) {
		int at = text.indexOf('\\');
		if (at < 0) {
			return text;
		}
		StringBuilder plain = new StringBuilder(text.length());
		int from = 0;
		for (; at >= 0; at = text.indexOf('\\', from)) {
			plain.append(text, from, at);
			char kind = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
			from = at + 2;
			switch (kind) {
			case '\\' -> plain.append('\\');
			case 't' -> plain.append('\t');
			case 'n' -> plain.append('\n');
			case 'r' -> plain.append('\r');
			case 'u' -> {
				plain.append(code(text, from));
				from += 4;
			}
			default -> throw new IllegalArgumentException("a backslash that begins no escape");
			}
		}
		return plain.append(text, from, text.length()).toString();
	}

	private static char code(String text, int from) {
		int code = 0;
		for (int i = from; i < from + 4; i++) {
			int digit = i < text.length() ? Character.digit(text.charAt(i), 16) : -1;
			if (digit < 0) {
				throw new IllegalArgumentException("an escape without its four digits");
			}
			code = code << 4 | digit;
		}
		return (char) code;
	}
}
