package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32C;

import org.cairnfield.core.text.Words;

/**
 * Reads a file of lines, without making objects: the fields of the current line are ranges of a buffer. CR before LF is
 * ignored, as another program may have put it there.
 */
final class LineReader {

	/** The most bytes of a line. */
	static final int LONGEST_BYTES = 1 << 20;

	private final InputStream in;
	private final CRC32C checksum = new CRC32C();
	private byte[] bytes = new byte[1 << 16];
	private int from;
	private int to;
	private int filled;
	private int next;
	private boolean exhausted;
	private boolean carriageReturns;
	private boolean complete;
	private long line;
	private long sum;
	private int[] starts = new int[16];
	private int fields;

	LineReader(InputStream in) {
		this.in = in;
	}

	/**
	 * The next line.
	 *
	 * @return false at the end of the file
	 * @throws Unreadable for a line that is too long
	 */
	boolean next() throws IOException {
		sum = checksum.getValue();
		from = next;
		int at = next;
		while (true) {
			while (at < filled && bytes[at] != '\n') {
				at++;
			}
			if (at < filled || exhausted) {
				break;
			}
			at -= from;
			fill();
			at += from;
		}
		if (at == from && at == filled) {
			return false;
		}
		line++;
		complete = at < filled;
		to = at;
		next = complete ? at + 1 : at;
		if (to > from && bytes[to - 1] == '\r') {
			to--;
			carriageReturns = true;
		}
		checksum.update(bytes, from, to - from);
		checksum.update('\n');
		split();
		return true;
	}

	private void fill() throws IOException {
		int kept = filled - from;
		if (kept > LONGEST_BYTES) {
			line++;
			throw new Unreadable(Messages.LineReader_aLineIsLongerThan);
		}
		byte[] target = kept > bytes.length / 2 ? new byte[bytes.length * 2] : bytes;
		System.arraycopy(bytes, from, target, 0, kept);
		bytes = target;
		from = 0;
		filled = kept;
		int n = in.read(bytes, filled, bytes.length - filled);
		exhausted = n < 0;
		filled += Math.max(n, 0);
	}

	private void split() {
		fields = 1;
		starts[0] = from;
		for (int i = from; i < to; i++) {
			if (bytes[i] == '\t') {
				if (fields + 1 >= starts.length) {
					starts = Arrays.copyOf(starts, 2 * starts.length);
				}
				starts[fields++] = i + 1;
			}
		}
		starts[fields] = to + 1;
	}

	/** Number of the current line, from 1. */
	long line() {
		return line;
	}

	/** Whether the current line was ended; the last line of a cut file is not. */
	boolean isComplete() {
		return complete;
	}

	/** Whether lines ended with CR LF. */
	boolean hasCarriageReturns() {
		return carriageReturns;
	}

	/** CRC-32C of all lines before the current one. */
	long sumBefore() {
		return sum;
	}

	int fields() {
		return fields;
	}

	byte[] bytes() {
		return bytes;
	}

	int start(int field) {
		return starts[field];
	}

	int end(int field) {
		return starts[field + 1] - 1;
	}

	boolean is(int field, String ascii) {
		int start = start(field);
		if (end(field) - start != ascii.length()) {
			return false;
		}
		for (int i = 0; i < ascii.length(); i++) {
			if (bytes[start + i] != ascii.charAt(i)) {
				return false;
			}
		}
		return true;
	}

	/** The line as a text, with what is no UTF-8 replaced: for messages and headers. */
	String whole() {
		return new String(bytes, from, Math.min(to - from, 200), StandardCharsets.UTF_8);
	}

	/** A field as it was before it was escaped. */
	String field(int field) throws Unreadable {
		String text = text(bytes, start(field), end(field));
		if (text == null) {
			throw new Unreadable(Messages.LineReader_notInUtf8);
		}
		try {
			return Escapes.unescape(text);
		} catch (IllegalArgumentException e) {
			throw new Unreadable(e.getMessage());
		}
	}

	/** As {@link #field}; null for a text that is not set. */
	String optional(int field) throws Unreadable {
		return is(field, "-") ? null : field(field);
	}

	/** A whole number, without sign except '-', in its shortest form. */
	long number(int field) throws Unreadable {
		int at = start(field);
		int end = end(field);
		boolean negative = at < end && bytes[at] == '-';
		at += negative ? 1 : 0;
		if (at == end || end - at > 19) {
			throw new Unreadable(Words.bind(Messages.LineReader_notAWholeNumber, shown(field)));
		}
		long number = 0;
		for (; at < end; at++) {
			int digit = bytes[at] - '0';
			if (digit < 0 || digit > 9) {
				throw new Unreadable(Words.bind(Messages.LineReader_notAWholeNumber, shown(field)));
			}
			number = number * 10 - digit;
			if (number > 0) {
				throw new Unreadable(Words.bind(Messages.LineReader_aNumberOutOfRange, shown(field)));
			}
		}
		if (!negative && number == Long.MIN_VALUE) {
			throw new Unreadable(Words.bind(Messages.LineReader_aNumberOutOfRange, shown(field)));
		}
		return negative ? number : -number;
	}

	int intNumber(int field) throws Unreadable {
		long number = number(field);
		if (number != (int) number) {
			throw new Unreadable(Words.bind(Messages.LineReader_aNumberOutOfRange, shown(field)));
		}
		return (int) number;
	}

	double decimal(int field) throws Unreadable {
		double number = Decimals.parse(bytes, start(field), end(field));
		if (Double.isNaN(number)) {
			throw new Unreadable(Words.bind(Messages.LineReader_notANumber, shown(field)));
		}
		return number;
	}

	/** The beginning of a field, for messages. */
	String shown(int field) {
		int start = start(field);
		return new String(bytes, start, Math.min(end(field) - start, 40), StandardCharsets.UTF_8)
				.replaceAll("\\p{Cntrl}", "?");
	}

	/** Some bytes as a text; null where they are not UTF-8. */
	static String text(byte[] bytes, int from, int to) {
		for (int i = from; i < to; i++) {
			if (bytes[i] < 0) {
				return strictly(bytes, from, to);
			}
		}
		return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
	}

	private static String strictly(byte[] bytes, int from, int to) {
		try {
			return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from, to - from)).toString();
		} catch (CharacterCodingException e) {
			return null;
		}
	}
}
