package org.cairnfield.core.health;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String SampleHealth_judgingSamples;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
