package org.cairnfield.curation.edit;

/** A value cannot be taken; the message says why and what would do. */
public final class UnfitValueException extends IllegalArgumentException {

	private static final long serialVersionUID = 1;

	/** @param message for a person, without a full stop */
	public UnfitValueException(String message) {
		super(message);
	}
}
