package org.cairnfield.ui.internal.exchange;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ConnectDialog_aFolderThatDoesNot;
	public static String ConnectDialog_aSharedFolderOrSsh;
	public static String ConnectDialog_browse;
	public static String ConnectDialog_connect;
	public static String ConnectDialog_connectToARemote;
	public static String ConnectDialog_folderOrUrl;
	public static String Connection_connectTheArchiveFirst;
	public static String Connection_goBackToThePresent;
	public static String Connection_lookingUpTheRemote;
	public static String Connection_noArchiveIsOpen;
	public static String Connection_theArchiveIsDamaged;
	public static String Connection_theArchiveIsReadOnly;
	public static String CopyDialog_aSharedFolderOrSsh;
	public static String CopyDialog_browse;
	public static String CopyDialog_browse2;
	public static String CopyDialog_cannotBeAFolder;
	public static String CopyDialog_copyAnArchiveFromA;
	public static String CopyDialog_copyAndOpen;
	public static String CopyDialog_intoTheFolder;
	public static String CopyDialog_nameAnotherOne;
	public static String CopyDialog_remoteFolderOrUrl;
	public static String CopyDialog_theFolderAppearsWhenThe;
	public static String ExchangedDialog_exchangeWithOthers;
	public static String ExchangedDialog_notesOnTheExchange;
	public static String ExchangedDialog_nothingIsLeftToDecide;
	public static String ExchangedDialog_receivedSent;
	public static String ExchangedDialog_savePoint;
	public static String ExchangedDialog_toDecideTheViewConflicts;
	public static String ExchangeNowHandler_exchangeWithOthers;
	public static String Exchanging_dismiss;
	public static String Exchanging_exchangingWithOthers;
	public static String Exchanging_show;
	public static String RemoteCopy_copying;
	public static String RemoteDialog_for;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
