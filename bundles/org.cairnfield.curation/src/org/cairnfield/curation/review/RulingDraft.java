package org.cairnfield.curation.review;

/**
 * What goes with the next verdict.
 *
 * @param home   cluster that a move goes to, such as "7" or "C7"; empty for that of the nearest labelled sample
 * @param reason code, empty where the evidence is to give it
 * @param text   the reviewer's own words; may be empty
 */
public record RulingDraft(String home, String reason, String text) {

	/** Nothing. */
	public static final RulingDraft EMPTY = new RulingDraft("", "", "");

	/** For any decision but a move to a cluster of one's choice. */
	public RulingDraft(String reason, String text) {
		this("", reason, text);
	}
}
