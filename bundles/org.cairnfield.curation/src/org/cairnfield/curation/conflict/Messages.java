package org.cairnfield.curation.conflict;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String ConflictTable_aSecondValueIsKept;
	public static String ConflictTable_enterYesInTheRow;
	public static String ConflictTable_exportTheTableAgainSomebody;
	public static String ConflictTable_inColumnKeepIsNeither;
	public static String ConflictTable_keepOneOfThem;
	public static String ConflictTable_keepOneOfTheValues;
	public static String ConflictTable_nobodyHasSetOfTo;
	public static String ConflictTable_thereIsNoOpenConflict;
	public static String DecideConflictsCommand_decide;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
