package org.cairnfield.core.choose;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AutomaticChoice_tryingSplitsAndSearches;
	public static String TooLittleTimeException_theTimeIsTooShort;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
