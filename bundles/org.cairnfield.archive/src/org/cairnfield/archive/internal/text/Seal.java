package org.cairnfield.archive.internal.text;

import java.util.Locale;

/** The last line of a file: how many records it has, and the CRC-32C (as in RFC 3720) of all bytes before. */
final class Seal {

	private static final String WORD = "end";

	private Seal() {
	}

	static String line(long records, long crc) {
		return WORD + '\t' + records + '\t' + hex(crc) + '\n';
	}

	static String hex(long crc) {
		return String.format(Locale.ROOT, "%08x", crc);
	}

	/** Whether the line in the reader is a seal by its form: three fields, the first one the word. */
	static boolean isIn(LineReader line) {
		return line.fields() == 3 && line.is(0, WORD);
	}
}
