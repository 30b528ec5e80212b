package org.cairnfield.ui.save;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String Damaged_andMore;
	public static String Damaged_cancel;
	public static String Damaged_goOnDespiteTheDamage;
	public static String Damaged_mendItFirstRestoreA;
	public static String Damaged_theArchiveIsDamagedAnd;
	public static String Damaged_youCanMendItFirst;
	public static String Restore_andMore;
	public static String Restore_aNewSavePointRecords;
	public static String Restore_asSavePoint;
	public static String Restore_cancel;
	public static String Restore_comparing;
	public static String Restore_dismiss;
	public static String Restore_restore;
	public static String Restore_restore2;
	public static String Restore_restored;
	public static String Restore_revert;
	public static String Restore_revert2;
	public static String Restore_reverted;
	public static String Restore_saveAndGoOn;
	public static String Restore_theArchiveBecomesWhatIt;
	public static String Restore_theArchiveBecomesWhatIt2;
	public static String Restore_theArchiveBecomesWhatIt3;
	public static String Restore_theArchiveIsLikeThat;
	public static String Restore_thePreviousStateIsBack;
	public static String Restore_thereAreUnsavedChangesThey;
	public static String Restore_thisUndoesWhatWasChanged;
	public static String Restore_undo;
	public static String Restore_undo2;
	public static String Restore_whatIsSavedIsLike;
	public static String Restore_whatSavePointChangedIs;
	public static String Saving_dismiss;
	public static String Saving_saving;
	public static String Saving_whatHadSavedIsA;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
