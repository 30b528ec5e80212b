package org.cairnfield.batch.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Prints for people, who may have a terminal. Names, notes and messages come from files of others, so that every character a
 * terminal would obey, or that turns the direction of a line, is shown as an escape such as {@code \x1b}. Line ends and tabs
 * pass. UTF-8, whatever the locale.
 */
final class TerminalWriter extends PrintWriter {

	private final Visible visible;

	/** @param flush after each line */
	TerminalWriter(OutputStream out, boolean flush) {
		this(new Visible(new OutputStreamWriter(out, StandardCharsets.UTF_8)), flush);
	}

	private TerminalWriter(Visible visible, boolean flush) {
		super(visible, flush);
		this.visible = visible;
	}

	/** Moves the cursor back to the beginning of the line, which is meant for the terminal. */
	void carriageReturn() {
		try {
			visible.control('\r');
		} catch (IOException e) {
			setError();
		}
	}

	/** Whether a character is shown as an escape: controls, and marks that change the direction of what follows. */
	static boolean isHidden(int c) {
		return c < ' ' && c != '\n' && c != '\t' || c >= 0x7f && c < 0xa0 || c == 0x61c || c == 0x200e || c == 0x200f
				|| c >= 0x2028 && c <= 0x202e || c >= 0x2066 && c <= 0x2069;
	}

	private static final class Visible extends FilterWriter {

		Visible(Writer out) {
			super(out);
		}

		void control(char c) throws IOException {
			out.write(c);
		}

		@Override
		public void write(int c) throws IOException {
			if (isHidden((char) c)) {
				out.write(String.format(c < 0x100 ? "\\x%02x" : "\\u%04x", c & 0xFFFF));
			} else {
				out.write(c);
			}
		}

		@Override
		public void write(char[] text, int from, int length) throws IOException {
			int plain = from;
			for (int i = from; i < from + length; i++) {
				if (isHidden(text[i])) {
					out.write(text, plain, i - plain);
					write(text[i]);
					plain = i + 1;
				}
			}
			out.write(text, plain, from + length - plain);
		}

		@Override
		public void write(String text, int from, int length) throws IOException {
			write(text.substring(from, from + length).toCharArray(), 0, length);
		}
	}
}
