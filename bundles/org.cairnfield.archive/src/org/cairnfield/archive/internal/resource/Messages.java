package org.cairnfield.archive.internal.resource;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String ArchiveFiles_accessPoint;
	public static String ArchiveFiles_addTheDeviceOrName;
	public static String ArchiveFiles_giveItAnIdOf;
	public static String ArchiveFiles_giveOneOfThemAnother;
	public static String ArchiveFiles_nothingWasSavedSurveyNames;
	public static String ArchiveFiles_nothingWasSavedTheId;
	public static String ArchiveFiles_nothingWasSavedTheId2;
	public static String ArchiveReader_holdsTheLedgerWhichIs;
	public static String ArchiveReader_holdsTheSplitWhichIs;
	public static String ArchiveReader_holdsWhatBelongsInA;
	public static String ArchiveReader_isDamagedInOneOf;
	public static String ArchiveReader_isMissing;
	public static String ArchiveReader_isNotPartOfThe;
	public static String ArchiveReader_isOfFormat1Which;
	public static String ArchiveReader_moveItElsewhereOrRestore;
	public static String ArchiveReader_refersToTwice;
	public static String ArchiveReader_refersToWhichIsNo;
	public static String ArchiveReader_shownAsOfTheLast;
	public static String PartResource_noFileOfAnArchive;
	public static String PartResource_noRootOfAFile;
	public static String StructureReader_canNotBeRead;
	public static String StructureReader_doesNotHoldOneArchive;
	public static String StructureReader_hasAWithoutAUsable;
	public static String StructureReader_hasTheIdTwice;
	public static String StructureReader_itIsNotWellFormed;
	public static String StructureReader_refersToWhichIsNot;
	public static String Uris_notDeleted;
	public static String Uris_notOpened;
	public static String Uris_notWritten;
	public static String WholeSurveys_isDamaged;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
