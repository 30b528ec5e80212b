package org.cairnfield.ui.internal.notice;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String DamageDialog_damage;
	public static String DamageDialog_doNotOpen;
	public static String DamageDialog_file;
	public static String DamageDialog_line;
	public static String DamageDialog_line2;
	public static String DamageDialog_openAnyway;
	public static String DamageDialog_theArchiveIsReadOnly;
	public static String DamageDialog_theDamageInFull;
	public static String DamageDialog_theseFilesAreNotAs;
	public static String DamageDialog_whatCanStillBeRead;
	public static String DamageDialog_whatIsWrong;
	public static String DamageDialog_whatToDo;
	public static String DamageDialog_whatToDo2;
	public static String NoticeBar_error;
	public static String NoticeBar_information;
	public static String NoticeBar_warning;
	public static String StateNotices_aboutThisArchive;
	public static String StateNotices_backToThePresentState;
	public static String StateNotices_dismiss;
	public static String StateNotices_places;
	public static String StateNotices_readOnly;
	public static String StateNotices_show;
	public static String StateNotices_showAll;
	public static String StateNotices_theArchiveIsDamagedPart;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
