package org.cairnfield.ui.internal.conflicts.model;

import java.time.Instant;

/**
 * A value that a conflict can be decided for.
 *
 * @param value  as the archive keeps it, null for none
 * @param words  the same for people
 * @param person who set it; null for the value from before
 * @param time   when; null for the value from before
 */
public record ConflictValue(String value, String words, String person, Instant time) {

	/** Who set it, in words. */
	public String who() {
		return person == null ? "before" : person;
	}
}
