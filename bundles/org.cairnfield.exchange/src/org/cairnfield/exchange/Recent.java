package org.cairnfield.exchange;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/** Passes characters on and remembers those since the last record began, up to a limit. */
final class Recent extends Reader {

	private final Reader in;
	private final int most;
	private char[] kept = new char[1 << 15];
	/** Position of the first character kept, from the beginning of the text. */
	private long base;
	private int length;

	Recent(Reader in, int most) {
		this.in = in;
		this.most = most;
	}

	@Override
	public int read(char[] into, int from, int wanted) throws IOException {
		if (length > most) {
			throw new Failures.Refused("a record here is longer than " + CellWords.count(most) + " characters",
					"Look for a quotation mark that is not closed, or for another kind of file");
		}
		int n = in.read(into, from, wanted);
		if (n > 0) {
			if (length + n > kept.length) {
				kept = Arrays.copyOf(kept, Math.max(length + n, kept.length * 2));
			}
			System.arraycopy(into, from, kept, length, n);
			length += n;
		}
		return n;
	}

	/** Forgets what lies before {@code position}. */
	void forgetBefore(long position) {
		int gone = (int) Math.max(0, Math.min(length, position - base));
		// moving the rest for each record would cost more than it saves
		if (gone > 1 << 14) {
			System.arraycopy(kept, gone, kept, 0, length - gone);
			length -= gone;
			base += gone;
		}
	}

	/** The text from {@code position} through {@code lines} lines, without the last line's end. */
	String text(long position, long lines) {
		int from = (int) Math.max(0, position - base);
		int at = from;
		long left = lines;
		while (at < length) {
			char c = kept[at];
			if (c == '\n' || c == '\r') {
				if (--left <= 0) {
					break;
				}
				if (c == '\r' && at + 1 < length && kept[at + 1] == '\n') {
					at++;
				}
			}
			at++;
		}
		return new String(kept, from, at - from);
	}

	@Override
	public void close() throws IOException {
		in.close();
	}
}
