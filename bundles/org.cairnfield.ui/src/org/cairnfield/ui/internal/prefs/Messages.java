package org.cairnfield.ui.internal.prefs;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String PersonPage_cancel;
	public static String PersonPage_nameOrInitials;
	public static String PersonPage_saveAs;
	public static String PersonPage_savePointsWaiversAndVerdicts;
	public static String PersonPage_thereAreUnsavedChangesBy;
	public static String PersonPage_theyAreMine;
	public static String PersonPage_unsavedChanges;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
