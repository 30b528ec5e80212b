package org.cairnfield.archive.signature;

import java.util.Locale;

/**
 * What is known of the signature of a tag.
 *
 * @param by     whose key it is, as the user's own key ring or list of signers names it; empty where that is not known
 * @param detail more in words, such as the key or why nothing was checked; may be empty
 */
public record Signature(State state, String by, String detail) {

	/** How far a signature can be relied on. */
	public enum State {
		/** It is that of a key that is known here, over what the tag holds. */
		GOOD,
		/** It is not that of the key that it names, or that key was revoked. */
		BAD,
		/** Nobody here knows the key. Anybody can make such a signature. */
		UNKNOWN_KEY,
		/** There is none. */
		NOT_SIGNED,
		/** Nothing here can check it. */
		NOT_CHECKED;

		/** In words, for people and programs. */
		@Override
		public String toString() {
			return name().toLowerCase(Locale.ROOT).replace('_', ' ');
		}
	}

	/** In one line. */
	@Override
	public String toString() {
		return state + (by.isEmpty() ? "" : ", by " + by) + (detail.isEmpty() ? "" : " (" + detail + ")");
	}
}
