package org.cairnfield.ui.internal.conflicts.model;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ConflictWords_dbm;
	public static String ConflictWords_floor;
	public static String ConflictWords_gatesOfARelease;
	public static String ConflictWords_inTheMap;
	public static String ConflictWords_keptOrRemoved;
	public static String ConflictWords_levelOf;
	public static String ConflictWords_mFromBefore;
	public static String ConflictWords_noFloor;
	public static String ConflictWords_notAsked;
	public static String ConflictWords_notHeard;
	public static String ConflictWords_noValue;
	public static String ConflictWords_sampleOf;
	public static String ConflictWords_setAside;
	public static String ConflictWords_setAsideOrNot;
	public static String ConflictWords_theArchive;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
