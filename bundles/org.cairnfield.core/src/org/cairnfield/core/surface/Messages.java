package org.cairnfield.core.surface;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Surfaces_spreadingValuesOverTheFloor;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
