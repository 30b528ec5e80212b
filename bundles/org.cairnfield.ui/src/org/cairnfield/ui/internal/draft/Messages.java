package org.cairnfield.ui.internal.draft;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String DraftKeeper_aCrashWouldLoseThe;
	public static String DraftKeeper_keepingUnsavedChanges;
	public static String DraftKeeper_theDraftCouldNotBe;
	public static String DraftKeeper_theUnsavedChangesCouldNot;
	public static String DraftOffer_bringBackUnsavedWork;
	public static String DraftOffer_broughtBackBy;
	public static String DraftOffer_draftsCouldNotBeRead;
	public static String DraftOffer_file;
	public static String DraftOffer_files;
	public static String DraftOffer_itCanBeBroughtBack;
	public static String DraftOffer_itCannotBeBroughtBack;
	public static String DraftOffer_itCannotBeBroughtBack2;
	public static String DraftOffer_notKnown;
	public static String DraftOffer_recordingWhatDid;
	public static String DraftOffer_saveOrUndoYourOwn;
	public static String DraftOffer_theChangesCouldNotBe;
	public static String DraftOffer_theDraftCouldNotBe;
	public static String Recovery_bringBackOrDelete;
	public static String Recovery_keptForLater;
	public static String Recovery_piecesOfUnsavedWorkAre;
	public static String Recovery_unsavedWorkOfFromIs;
	public static String RecoveryDialog_bringBack;
	public static String RecoveryDialog_broughtBackItBecomesA;
	public static String RecoveryDialog_broughtBackItIsUnsaved;
	public static String RecoveryDialog_cancel;
	public static String RecoveryDialog_delete;
	public static String RecoveryDialog_delete2;
	public static String RecoveryDialog_deleteTheChangesOfBy;
	public static String RecoveryDialog_deleteUnsavedWork;
	public static String RecoveryDialog_keepForLater;
	public static String RecoveryDialog_lastChange;
	public static String RecoveryDialog_theProgramEndedBeforeThese;
	public static String RecoveryDialog_unsavedWork;
	public static String RecoveryDialog_unsavedWorkIn;
	public static String RecoveryDialog_what;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
