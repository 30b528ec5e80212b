package org.cairnfield.archive.internal.merge;

import java.io.IOException;
import java.time.Instant;

import org.cairnfield.model.conflict.Unit;

/** Who has set what on one side of a merge. Asked only where two sides differ. */
@FunctionalInterface
public interface Authors {

	/**
	 * Who set something.
	 *
	 * @param time when it was recorded
	 */
	record Author(String person, Instant time) {
	}

	/**
	 * Who was the first on this side to set a unit to a value.
	 *
	 * @param value as {@link org.cairnfield.model.conflict.UnitText} has it
	 */
	Author of(Unit unit, String value) throws IOException;
}
