package org.cairnfield.archive.fault;

import java.util.Objects;

/**
 * Something on disk that is not as it was saved. As long as an archive has any, it is read-only.
 *
 * @param file   path below the folder of the archive, with / between its steps
 * @param line   counted from 1; 0 where the file as a whole is meant
 * @param reason what is wrong
 * @param remedy what a person can do
 */
public record Damage(String file, long line, String reason, String remedy) {

	public Damage {
		Objects.requireNonNull(file);
		Objects.requireNonNull(reason);
		Objects.requireNonNull(remedy);
	}

	/** File, line, reason and remedy in one line. */
	@Override
	public String toString() {
		return file + (line > 0 ? ":" + line : "") + ": " + reason + " (" + remedy + ")";
	}
}
