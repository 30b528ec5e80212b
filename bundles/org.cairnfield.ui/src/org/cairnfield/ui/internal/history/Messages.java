package org.cairnfield.ui.internal.history;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String BranchColumn_linesOfWorkTheyPart;
	public static String HistoryView_and;
	public static String HistoryView_bringsTogether;
	public static String HistoryView_by;
	public static String HistoryView_byANewSavePoint;
	public static String HistoryView_byANewSavePoint2;
	public static String HistoryView_changesOf;
	public static String HistoryView_compare;
	public static String HistoryView_comparing;
	public static String HistoryView_comparing2;
	public static String HistoryView_exchange;
	public static String HistoryView_fromTo;
	public static String HistoryView_fromToWhatIsSaved;
	public static String HistoryView_makeASavePoint;
	public static String HistoryView_makingASavePoint;
	public static String HistoryView_nothingHasChangedSinceThe;
	public static String HistoryView_openingAPastState;
	public static String HistoryView_readingTheHistory;
	public static String HistoryView_restoreThisState;
	public static String HistoryView_revertItsChanges;
	public static String HistoryView_savePoint;
	public static String HistoryView_savePointOf;
	public static String HistoryView_savePoints;
	public static String HistoryView_selectASavePointTo;
	public static String HistoryView_theHistoryBreaksOffHere;
	public static String HistoryView_thePastStateDoesNot;
	public static String HistoryView_theSignatureCannotBeChecked;
	public static String HistoryView_time;
	public static String HistoryView_twoSavePointsWithEach;
	public static String HistoryView_unsavedChangesAreNotIn;
	public static String HistoryView_viewThisState;
	public static String HistoryView_whatChanged;
	public static String HistoryView_whatWasDoneInYour;
	public static String HistoryView_who;
	public static String RemoteLine_archiveConnectToARemote;
	public static String RemoteLine_checkingTheRemote;
	public static String RemoteLine_checkTheRemote;
	public static String RemoteLine_connectedTo;
	public static String RemoteLine_connectedToNoRemote;
	public static String RemoteLine_listsWhatWouldComeIn;
	public static String RemoteLine_looking;
	public static String RemoteLine_theRemoteCouldNotBe;
	public static String RemoteLine_unsavedChangesAreNotCounted;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
