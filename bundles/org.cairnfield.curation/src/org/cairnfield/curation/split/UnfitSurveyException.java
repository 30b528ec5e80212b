package org.cairnfield.curation.split;

/** A survey has too little in it, or too much, for what was asked; the message says which and what would help. */
public final class UnfitSurveyException extends IllegalArgumentException {

	private static final long serialVersionUID = 1;

	/** @param message for a person, without a full stop */
	public UnfitSurveyException(String message) {
		super(message);
	}
}
