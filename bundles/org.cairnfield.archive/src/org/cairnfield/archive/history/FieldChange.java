package org.cairnfield.archive.history;

/**
 * A property that differs.
 *
 * @param name   of the property, as in the model
 * @param before as text, null if it was not set
 * @param after  likewise
 */
public record FieldChange(String name, String before, String after) {

	@Override
	public String toString() {
		return name + ": " + (before == null ? Messages.FieldChange_notSet : before) + " -> "
				+ (after == null ? Messages.FieldChange_notSet : after);
	}
}
