package org.cairnfield.archive.fault;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String LockedException_anotherProcess;
	public static String LockedException_isInUseBy;
	public static String LockOwner_onProcessSince;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
