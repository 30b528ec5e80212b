package org.cairnfield.ui.session;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ArchiveSession_thisIsRelease;
	public static String ArchiveSession_thisIsTheStateOf;
	public static String Findings_checkingAgain;
	public static String Findings_checkingForTheFirstTime;
	public static String Findings_checkingTheArchive;
	public static String Findings_notAsked;
	public static String Findings_notCheckedYet;
	public static String Findings_theCheckDidNotFinish;
	public static String Findings_waived;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
