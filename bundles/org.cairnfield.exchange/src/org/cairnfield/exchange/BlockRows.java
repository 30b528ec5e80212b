package org.cairnfield.exchange;

import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * The rows of a block, one after the other, knowing line and text of each: RFC 4180 with another separator, text after a
 * closing quotation mark belonging to the field. Fields become texts only where one is asked for.
 */
final class BlockRows implements Row {

	private final Blocks of;
	private final byte[] bytes;
	private final int length;
	private final boolean last;
	private final int soundTo;
	private final byte separator;
	private final boolean[] stops = new boolean[256];
	private int at;
	private long nextLine;

	private int start;
	private int textEnd;
	private long line;
	private int lines;
	private int size;
	private int[] from = new int[64];
	private int[] to = new int[64];
	/** Fields that differ from the bytes of the file; their places are noted as complements. */
	private byte[] side = {};
	private int sideLength;

	/**
	 * @param last    whether the file ends with these bytes, and a record without a line end is whole
	 * @param soundTo bytes that are known to be UTF-8
	 */
	BlockRows(Blocks of, byte[] bytes, int length, long line, boolean last, int soundTo) {
		this.of = of;
		this.bytes = bytes;
		this.length = length;
		this.last = last;
		this.soundTo = soundTo;
		this.nextLine = line;
		separator = of.separator[0];
		stops['\n'] = true;
		stops['\r'] = true;
		stops[separator & 0xff] = true;
	}

	/** Moves to the next row that is not blank; false at the end. */
	boolean next() throws IntakeException {
		while (advance()) {
			if (at > soundTo) {
				throw Failures.of(of.file, line, new MalformedInputException(1));
			}
			if (size > of.limits.columns()) {
				throw new IntakeException(of.file, line,
						Words.bind(Messages.BlockRows_columnsMoreThanTheThat, CellWords.count(size),
								CellWords.count(of.limits.columns())),
						Messages.BlockRows_checkThatTheFileIs);
			}
			if (!isBlank()) {
				return true;
			}
		}
		return false;
	}

	boolean isBlank() {
		return size == 1 && get(0).isBlank();
	}

	/** Moves to the next record, be it blank; false where none is whole. */
	boolean advance() throws IntakeException {
		if (at == length) {
			return false;
		}
		start = at;
		line = nextLine;
		lines = 1;
		size = 0;
		sideLength = 0;
		int p = start;
		while (true) {
			p = p < length && bytes[p] == '"' ? quoted(p) : plain(p);
			if (p < 0 || p == length && !last) {
				return false;
			}
			textEnd = p;
			if (p == length) {
				return finish(p);
			}
			byte stop = bytes[p++];
			if (stop == '\n') {
				return finish(p);
			}
			if (stop == '\r') {
				if (p == length && !last) {
					return false;
				}
				return finish(p < length && bytes[p] == '\n' ? p + 1 : p);
			}
			p += of.separator.length - 1;
		}
	}

	private boolean finish(int p) {
		at = p;
		nextLine = line + lines;
		return true;
	}

	/** Takes records as passed, {@code count} lines of them. */
	void skipTo(int position, int count) {
		at = position;
		nextLine += count;
	}

	/** Where the last record ends. */
	int end() {
		return at;
	}

	/** Physical line on which the next record begins. */
	long nextLine() {
		return nextLine;
	}

	/** The end of a field without quotation marks, which is noted. */
	private int plain(int begin) {
		int p = stop(begin);
		field(begin, p);
		return p;
	}

	private int stop(int begin) {
		int p = begin;
		while (p < length && (!stops[bytes[p] & 0xff] || bytes[p] == separator && !isSeparator(p))) {
			p++;
		}
		return p;
	}

	private boolean isSeparator(int p) {
		int n = of.separator.length;
		return n == 1 || p + n <= length && Arrays.equals(bytes, p, p + n, of.separator, 0, n);
	}

	/** The end of a field that begins with a quotation mark, which is noted; -1 where it is not whole. */
	private int quoted(int begin) throws IntakeException {
		int p = begin + 1;
		int doubled = 0;
		while (p < length) {
			byte b = bytes[p];
			if (b == '"') {
				if (p + 1 == length && !last) {
					return -1;
				}
				if (p + 1 == length || bytes[p + 1] != '"') {
					break;
				}
				doubled++;
				p++;
			} else if (b == '\r' || b == '\n' && bytes[p - 1] != '\r') {
				lines++;
			}
			p++;
		}
		if (p >= length) {
			if (last) {
				throw Failures.of(of.file, line, Failures.unclosed());
			}
			return -1;
		}
		int end = stop(p + 1);
		if (doubled == 0 && end == p + 1) {
			field(begin + 1, p);
		} else {
			clean(begin + 1, p, end);
		}
		return end;
	}

	/** A field with marks doubled, or text behind the closing one. */
	private void clean(int begin, int close, int end) {
		if (side.length < sideLength + end - begin) {
			side = Arrays.copyOf(side, Math.max(2 * side.length, sideLength + end - begin));
		}
		int first = sideLength;
		for (int p = begin; p < close; p++) {
			side[sideLength++] = bytes[p];
			p += bytes[p] == '"' ? 1 : 0;
		}
		System.arraycopy(bytes, close + 1, side, sideLength, end - close - 1);
		sideLength += end - close - 1;
		field(~first, ~sideLength);
	}

	private void field(int begin, int end) {
		if (size == from.length) {
			from = Arrays.copyOf(from, 2 * size);
			to = Arrays.copyOf(to, 2 * size);
		}
		from[size] = begin;
		to[size++] = end;
	}

	@Override
	public String get(int column) {
		if (column >= size) {
			return "";
		}
		int begin = begin(column);
		return new String(array(column), begin, end(column) - begin, StandardCharsets.UTF_8);
	}

	/** As {@link CellNumbers#level(byte[], int, int)}. */
	int level(int column) {
		return column >= size ? CellNumbers.BLANK : CellNumbers.level(array(column), begin(column), end(column));
	}

	/** The bytes that hold a field of the row, from {@link #begin} to {@link #end(int)}; not to be changed. */
	byte[] array(int column) {
		return column < size && from[column] < 0 ? side : bytes;
	}

	int begin(int column) {
		return column >= size ? 0 : from[column] < 0 ? ~from[column] : from[column];
	}

	int end(int column) {
		return column >= size ? 0 : from[column] < 0 ? ~to[column] : to[column];
	}

	@Override
	public int size() {
		return size;
	}

	/** Physical line on which the row begins, from 1. */
	long line() {
		return line;
	}

	/** How many physical lines the row takes. */
	int lines() {
		return lines;
	}

	/** The row as it stands in the file, without its line end. */
	String raw() {
		return new String(bytes, start, textEnd - start, StandardCharsets.UTF_8);
	}
}
