package org.cairnfield.archive.history;

import java.time.Instant;
import java.util.List;

import org.cairnfield.archive.internal.git.Commit;

/**
 * A state of the archive that was recorded; a commit, for Git.
 *
 * @param id      40 hexadecimal digits
 * @param person  name of who made it
 * @param time    by that person's clock
 * @param summary first line of the message
 * @param message whole
 * @param parents ids of the states before; one, none for the first, several where Git merged
 */
public record SavePoint(String id, String person, Instant time, String summary, String message, List<String> parents) {

	static SavePoint of(Commit commit) {
		String summary = commit.message().lines().findFirst().orElse("");
		return new SavePoint(commit.id(), commit.author(), commit.time(), summary, commit.message(), commit.parents());
	}

	/** The first digits of the id, enough for people. */
	public String shortId() {
		return id.substring(0, 8);
	}
}
