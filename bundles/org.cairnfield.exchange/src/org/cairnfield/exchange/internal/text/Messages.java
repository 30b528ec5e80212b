package org.cairnfield.exchange.internal.text;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Times_offset;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
