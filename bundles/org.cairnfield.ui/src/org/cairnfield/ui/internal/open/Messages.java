package org.cairnfield.ui.internal.open;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String DiskWatch_anotherProgramHasChangedThe;
	public static String DiskWatch_checkingWhetherTheArchiveWas;
	public static String DiskWatch_readItAgain;
	public static String DiskWatch_theArchiveCouldNotBe;
	public static String Leaving_cancel;
	public static String Leaving_donTSave;
	public static String Leaving_hasChangesThatWereNot;
	public static String Leaving_packingTheHistory;
	public static String Leaving_save;
	public static String Leaving_theLockOfCouldNot;
	public static String Leaving_unsavedChanges;
	public static String Opening_making;
	public static String Opening_makingTheDemoArchive;
	public static String Opening_opening;
	public static String Opening_openingTheDemo;
	public static String Opening_theLockOfCouldNot;
	public static String RecentMenu_noArchiveHasBeenOpened;
	public static String StartPage_theStartPageDoesNot;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
