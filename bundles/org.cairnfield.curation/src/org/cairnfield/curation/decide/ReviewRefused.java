package org.cairnfield.curation.decide;

/** The rules of review do not allow it; the message says why, and what can be done. */
public final class ReviewRefused extends RuntimeException {

	private static final long serialVersionUID = 1;

	/** @param message for a person, without a full stop */
	public ReviewRefused(String message) {
		super(message);
	}
}
