package org.cairnfield.curation.review;

/**
 * What came of the last step, for a person.
 *
 * @param refused whether nothing was done
 */
public record ReviewMessage(String text, boolean refused) {

	/** Nothing to report. */
	public static final ReviewMessage NONE = new ReviewMessage("", false);

	static ReviewMessage done(String text) {
		return new ReviewMessage(text, false);
	}

	/** @param why begins as a sentence does once its first letter is a capital */
	static ReviewMessage refused(String why) {
		return new ReviewMessage(why.isEmpty() ? why
				: Character.toUpperCase(why.charAt(0)) + why.substring(1) + (why.endsWith(".") ? "" : "."), true);
	}
}
