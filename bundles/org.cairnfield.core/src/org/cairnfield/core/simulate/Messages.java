package org.cairnfield.core.simulate;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Surveyor_recordingSamples;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
