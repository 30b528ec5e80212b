package org.cairnfield.ui.internal.conflicts;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ConflictNotices_showTheConflicts;
	public static String ConflictNotices_theConflictsCannotBeShown;
	public static String ConflictNotices_toDecidePeopleSetThe;
	public static String ConflictsView_before;
	public static String ConflictsView_conflicts;
	public static String ConflictsView_decidesTheConflictForThe;
	public static String ConflictsView_keepThisValue;
	public static String ConflictsView_noArchiveIsOpen;
	public static String ConflictsView_noConflictsTheyAriseWhere;
	public static String ConflictsView_nothingCanBeDecided;
	public static String ConflictsView_selectAConflictOnThe;
	public static String ConflictsView_setBy;
	public static String ConflictsView_setTo;
	public static String ConflictsView_time;
	public static String ConflictsView_value;
	public static String ConflictsView_valuesOfTheConflict;
	public static String ConflictsView_what;
	public static String ConflictsView_where;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
