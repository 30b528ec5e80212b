package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32C;

import org.cairnfield.core.text.Words;

/**
 * Writes a file of lines: header, records, seal. A record is put together field by field; {@link #tab} goes between fields,
 * {@link #end} after the last.
 */
final class LineWriter {

	private static final int FLUSH_BYTES = 1 << 16;

	private final OutputStream out;
	private final CRC32C checksum = new CRC32C();
	private byte[] bytes = new byte[2 * FLUSH_BYTES];
	private int size;
	private int lineStart;
	private long records;

	/** Begins the file. */
	LineWriter(OutputStream out, FileKind kind) throws IOException {
		this(out, kind, FileKind.VERSION);
	}

	/** Begins a file of another version than most. */
	LineWriter(OutputStream out, FileKind kind, int version) throws IOException {
		this.out = out;
		text(kind.header(version));
		finishLine();
	}

	LineWriter tab() {
		ascii('\t');
		return this;
	}

	/** A character below 0x80. */
	void ascii(char c) {
		if (size == bytes.length) {
			bytes = Arrays.copyOf(bytes, size + (size >> 1));
		}
		bytes[size++] = (byte) c;
	}

	/** A text that needs no escapes. */
	LineWriter text(String text) {
		int length = text.length();
		if (size + length > bytes.length) {
			bytes = Arrays.copyOf(bytes, Math.max(bytes.length + (bytes.length >> 1), size + length));
		}
		for (int i = 0; i < length; i++) {
			char c = text.charAt(i);
			if (c >= 0x80) {
				byte[] rest = text.substring(i).getBytes(StandardCharsets.UTF_8);
				bytes = size + rest.length > bytes.length ? Arrays.copyOf(bytes, size + rest.length + FLUSH_BYTES)
						: bytes;
				System.arraycopy(rest, 0, bytes, size, rest.length);
				size += rest.length;
				break;
			}
			bytes[size++] = (byte) c;
		}
		return this;
	}

	/** Any text. */
	LineWriter field(String text) {
		return text(Escapes.escape(text));
	}

	/** Any text, or nothing at all, which is not the same as an empty text. */
	LineWriter optional(String text) {
		return text == null ? text("-") : text.equals("-") ? text("\\u002d") : field(text);
	}

	LineWriter number(long number) {
		if (number < 0) {
			return text(Long.toString(number));
		}
		long power = 1;
		while (number / power >= 10) {
			power *= 10;
		}
		for (; power > 0; power /= 10) {
			ascii((char) ('0' + number / power % 10));
		}
		return this;
	}

	LineWriter decimal(double number) {
		Decimals.write(number, this);
		return this;
	}

	/** Ends a line that tells about the file as a whole. */
	void finishLine() throws IOException {
		ascii('\n');
		if (size - lineStart > LineReader.LONGEST_BYTES) {
			throw new IOException(Words.bind(Messages.LineWriter_aRecordOfBytesIs, size - lineStart));
		}
		lineStart = size;
		if (size >= FLUSH_BYTES) {
			flush();
		}
	}

	/** Ends a record. */
	void end() throws IOException {
		finishLine();
		records++;
	}

	private void flush() throws IOException {
		checksum.update(bytes, 0, size);
		out.write(bytes, 0, size);
		size = 0;
		lineStart = 0;
	}

	/** Ends the file. */
	void seal() throws IOException {
		flush();
		out.write(Seal.line(records, checksum.getValue()).getBytes(StandardCharsets.US_ASCII));
	}
}
