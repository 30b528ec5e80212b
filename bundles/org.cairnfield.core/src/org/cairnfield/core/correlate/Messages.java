package org.cairnfield.core.correlate;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String RowMoments_rowSums;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
