package org.cairnfield.archive.internal.text;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AccessPointBytes_aReadingIsAccessPoint;
	public static String AccessPointBytes_endsWithABlank;
	public static String AccessPointBytes_hasNoReadingsNotEven;
	public static String AccessPointBytes_notInUtf8;
	public static String AccessPointBytes_twoReadingsOfOneAccess;
	public static String ArchiveLayout_giveItAnIdOf;
	public static String ArchiveLayout_nothingWasSavedTheId;
	public static String LedgerText_aSecondVerdictWithThe;
	public static String LedgerText_doesNotNameTheLedger;
	public static String LedgerText_hasFieldsInPlaceOf;
	public static String LedgerText_noDecision;
	public static String LedgerText_noRoundOfReview;
	public static String LedgerText_notAMomentInUtc;
	public static String LineReader_aLineIsLongerThan;
	public static String LineReader_aNumberOutOfRange;
	public static String LineReader_notANumber;
	public static String LineReader_notAWholeNumber;
	public static String LineReader_notInUtf8;
	public static String LineWriter_aRecordOfBytesIs;
	public static String Migrations_isOfFormatTheNext;
	public static String PartReport_doesNotMatchItsChecksum;
	public static String PartReport_ifTheChangeIsMeant;
	public static String PartReport_itsLinesEndWithCr;
	public static String PartReport_moreLinesAreDamaged;
	public static String PartReport_restoreTheFileFromThe;
	public static String PartReport_wasChangedByAnotherProgram;
	public static String RawRecords_notInUtf8;
	public static String RecordReader_doesNotBeginWith;
	public static String RecordReader_endsBeforeItsEndThe;
	public static String RecordReader_goesOnAfterItsEnd;
	public static String RecordReader_isEmpty;
	public static String RecordReader_openTheArchiveWithThat;
	public static String RecordReader_wasWrittenByANewer;
	public static String SampleParts_doesNotNameTheColumn;
	public static String SampleParts_morePartsThanAnySurvey;
	public static String SampleParts_namesThePartTwice;
	public static String SampleParts_noNameOfAPart;
	public static String SamplesText_aSecondSampleWithThe;
	public static String SamplesText_doesNotNameTheColumns;
	public static String SamplesText_hasFieldsInPlaceOf;
	public static String SamplesText_noReasonForSettingA;
	public static String SamplesText_notAMomentInUtc;
	public static String SamplesText_theStateIsNeitherNor;
	public static String SplitText_aSecondCluster;
	public static String SplitText_aSecondLineForSample;
	public static String SplitText_hasFieldsInPlaceOf;
	public static String SplitText_neitherAParameterNorA;
	public static String SplitText_noNumberOfACluster;
	public static String SplitText_noParameterOfASplit;
	public static String SplitText_noRoleOfASample;
	public static String XmlSeal_doesNotEndWithThe;
	public static String XmlSeal_endsBeforeItsEndThe;
	public static String XmlSeal_isEmpty;
	public static String XmlSeal_isOfFormatWhichThis;
	public static String XmlSeal_openTheArchiveWithThat;
	public static String XmlSeal_wasWrittenByANewer;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
