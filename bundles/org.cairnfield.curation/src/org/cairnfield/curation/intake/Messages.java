package org.cairnfield.curation.intake;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String FaultRemedy_checkTheSeparatorOrMend;
	public static String FaultRemedy_checkWhichColumnIsThe;
	public static String FaultRemedy_checkWhichColumnsAreX;
	public static String FaultRemedy_checkWhichColumnsHoldLevels;
	public static String FaultRemedy_giveTheReadingsOfOne;
	public static String FaultRemedy_ifThisValueMeansNot;
	public static String FaultRemedy_shortenTheNameOrTake;
	public static String FaultRemedy_writeTimesAs203104;
	public static String IntakeDraft_lookingAtTheFiles;
	public static String IntakeDraft_notInTheDraft;
	public static String JoinedIntake_or;
	public static String SameNames_areNoAddresses;
	public static String SameNames_isNoAddress;
	public static String SameNames_nameOfAnAccessPoint;
	public static String SameNames_namesOfAccessPointsAre;
	public static String SameNames_usedAtSeveralSitesAt;
	public static String SurveyTaking_aSampleCannotBeCalled;
	public static String SurveyTaking_floor;
	public static String SurveyTaking_or;
	public static String SurveyTaking_severalSOfTheArchive;
	public static String TakeSurveysCommand_takeIn;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
