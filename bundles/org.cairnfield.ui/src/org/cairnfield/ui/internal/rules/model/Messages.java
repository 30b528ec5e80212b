package org.cairnfield.ui.internal.rules.model;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String RuleDrafts_asUsual;
	public static String RuleDrafts_cannotBeUsed;
	public static String RuleDrafts_notAsked;
	public static String RuleDrafts_theArchiveKeepsWhatCannot;
	public static String RuleDrafts_toBeMended;
	public static String RuleDrafts_usually;
	public static String RuleDrafts_usuallyTo;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
