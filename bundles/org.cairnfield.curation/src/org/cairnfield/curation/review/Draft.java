package org.cairnfield.curation.review;

/**
 * What goes with the next verdict.
 *
 * @param reason code, empty where the evidence is to give it
 * @param text   the reviewer's own words; may be empty
 */
public record Draft(String reason, String text) {

	/** Nothing. */
	public static final Draft EMPTY = new Draft("", "");
}
