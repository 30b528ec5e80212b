package org.cairnfield.curation.filter;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String FilterException_atCharacter;
	public static String Parser_aLevelCannotBeCompared;
	public static String Parser_aValueIsMissingAfter;
	public static String Parser_cannotBeComparedBy;
	public static String Parser_compareOneOf;
	public static String Parser_floor1;
	public static String Parser_has;
	public static String Parser_hasNothingToCompareBefore;
	public static String Parser_have;
	public static String Parser_heard5;
	public static String Parser_isComparedWithNothing;
	public static String Parser_isNothingThat;
	public static String Parser_somethingToLookForIs;
	public static String Parser_takeItAwayOrOpen;
	public static String Parser_takeSomeParenthesesAway;
	public static String Parser_theAddressOfAnAccess;
	public static String Parser_thisIsNestedTooDeeply;
	public static String Parser_thisParenthesisIsNotClosed;
	public static String Parser_thisParenthesisWasNeverOpened;
	public static String Parser_useOneOf;
	public static String Parser_writeAPartOfAn;
	public static String Parser_writeAWordSuchAs;
	public static String Parser_writeForInstanceAp00;
	public static String Parser_writeForInstanceOrIn;
	public static String Parser_writeWhatToCompareWith;
	public static String Parser_writeWhereItEnds;
	public static String RowFilter_allColumns;
	public static String SampleFilter_andOrNotPutTogether;
	public static String SampleFilter_ap00005e00;
	public static String SampleFilter_cluster7RoleNoiseCluster;
	public static String SampleFilter_compare;
	public static String SampleFilter_deviceGuideHasThisIn;
	public static String SampleFilter_findingAnyOpenFindingFinding;
	public static String SampleFilter_kindTestOfATest;
	public static String SampleFilter_noSurveyListedHereHas;
	public static String SampleFilter_sh04IdsWithThis;
	public static String SampleFilter_siteTideHouseQuotationMarks;
	public static String SampleFilter_stateAsideOrKeptReason;
	public static String SampleFilter_time20310407A;
	public static String Token_theEnd;
	public static String Token_theQuotationMarkIsNot;
	public static String Token_writeASecondOneWhere;
	public static String Values_isNoNumber;
	public static String Values_isNoSeverity;
	public static String Values_isNoState;
	public static String Values_isNoTime;
	public static String Values_theUnitHereIsNot;
	public static String Values_writeErrorWarningOrNote;
	public static String Values_writeItInUtcAs;
	public static String Values_writeItWithAPoint;
	public static String Values_writeKeptOrAside;
	public static String Values_writeOneSuchAs;
	public static String Values_writeOr;
	public static String Values_writeTheNumberAlone;
	public static String Vocabulary_apDbm;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
