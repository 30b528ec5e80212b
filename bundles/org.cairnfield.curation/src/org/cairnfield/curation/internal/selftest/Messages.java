package org.cairnfield.curation.internal.selftest;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String SelfTests_accessPoints;
	public static String SelfTests_singlePlaces;
	public static String SelfTests_tryingRulesOutOnPlanted;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
