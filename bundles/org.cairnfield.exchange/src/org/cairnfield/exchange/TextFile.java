package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.file.Path;

/** Writes a text, such as a picture or a report. */
public final class TextFile {

	private TextFile() {
	}

	/**
	 * UTF-8, whole or not at all, over an older file.
	 *
	 * @throws IntakeException where the file cannot be written
	 */
	public static void write(Path file, String text) throws IntakeException {
		try {
			AtomicFile.write(file, out -> out.write(text));
		} catch (IOException e) {
			throw Failures.writing(file, e);
		}
	}
}
