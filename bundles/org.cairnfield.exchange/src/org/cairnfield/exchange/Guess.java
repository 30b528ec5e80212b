package org.cairnfield.exchange;

/**
 * One thing understood about a file.
 *
 * @param what     such as "separator"
 * @param value    such as "comma"
 * @param evidence why, in words
 */
public record Guess(String what, String value, String evidence) {

	@Override
	public String toString() {
		return what + ": " + value + " (" + evidence + ")";
	}
}
