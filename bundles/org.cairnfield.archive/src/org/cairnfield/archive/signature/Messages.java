package org.cairnfield.archive.signature;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Signature_by;
	public static String SignerList_addAnotherLeadFirst;
	public static String SignerList_aListOfSignersCannot;
	public static String SignerList_editTheFileByHand;
	public static String SignerList_giveANameWithoutAny;
	public static String SignerList_isTheOnlyLeadAnd;
	public static String SignerList_itNames;
	public static String SignerList_nameAFileAsSsh;
	public static String SignerList_nameAnotherKeyOrRemove;
	public static String SignerList_nameTheFileWithThe;
	public static String SignerList_nobodyAtAll;
	public static String SignerList_thatIsAPrivateKey;
	public static String SignerList_thatIsNoPublicKey;
	public static String SignerList_theKeyIsThatOf;
	public static String SignerList_theKeyOfIsAlso;
	public static String SignerList_theListNamesNobody;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
