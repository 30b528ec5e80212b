package org.cairnfield.archive.signature;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.core.text.Words;

/**
 * What is known of the signature of a tag or a save point.
 *
 * @param by     whose key it is, as the key ring or list of signers names it, several names joined by ", "; empty where that is
 *               not known
 * @param detail more in words, such as the key or why nothing was checked; may be empty
 */
public record Signature(State state, String by, String detail) {

	/** As OpenPGP names the owner of a key. */
	private static final Pattern USER_ID = Pattern.compile("([^<>(]*?)\\s*(?:\\([^()]*\\)\\s*)?<([^<>]*)>");

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

	/** Whether it is good and that of a person, whatever the case of letters; of an OpenPGP key by name or address. */
	public boolean isOf(String person) {
		if (state != State.GOOD || person == null || person.isBlank()) {
			return false;
		}
		Matcher user = USER_ID.matcher(by);
		return user.matches() && (isSame(user.group(1), person) || isSame(user.group(2), person))
				|| Arrays.stream(by.split(", ")).anyMatch(name -> isSame(name, person));
	}

	static boolean isSame(String one, String other) {
		return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
	}

	/** In one line. */
	@Override
	public String toString() {
		return state + (by.isEmpty() ? "" : Words.bind(Messages.Signature_by, by))
				+ (detail.isEmpty() ? "" : " (" + detail + ")");
	}
}
