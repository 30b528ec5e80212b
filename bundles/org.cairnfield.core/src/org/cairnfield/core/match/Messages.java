package org.cairnfield.core.match;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String HomeEffects_effectsOfHomes;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
