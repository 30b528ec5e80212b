package org.cairnfield.ui.internal.start;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ChooseArchive_chooseOrMakeAnEmpty;
	public static String ChooseArchive_chooseTheFolderThatHolds;
	public static String ChooseArchive_newArchive;
	public static String ChooseArchive_openAnArchive;
	public static String FirstSteps_applyItsRemedy;
	public static String FirstSteps_applyTheRemedy;
	public static String FirstSteps_clickASampleToSee;
	public static String FirstSteps_compareSurveys;
	public static String FirstSteps_compareTheSurveysOfThe;
	public static String FirstSteps_halfAYearHasPassed;
	public static String FirstSteps_lookAtAFinding;
	public static String FirstSteps_lookAtSamples;
	public static String FirstSteps_makeASavePoint;
	public static String FirstSteps_openTheDemo;
	public static String FirstSteps_seeWhatTheWinterChanged;
	public static String FirstSteps_seeWhereSomethingIsWrong;
	public static String FirstSteps_select262SamplesOf262;
	public static String FirstSteps_selectXAndYExchanged;
	public static String FirstSteps_showTheFindings;
	public static String FirstSteps_showThePlace;
	public static String FirstSteps_showThePlan;
	public static String FirstSteps_takeInASurvey;
	public static String FirstSteps_takeInSurveyFiles;
	public static String FirstSteps_theInventedMarrowQuayMuseums;
	public static String FirstSteps_theMovedAccessPointMay;
	public static String FirstSteps_theSurveyThatWasTaken;
	public static String FirstSteps_waive;
	public static String FirstSteps_waiveAFinding;
	public static String FirstSteps_writeInHistoryWhatYou;
	public static String FirstStepsView_aFirstStepCannotBe;
	public static String FirstStepsView_thisCannotBeDoneNow;
	public static String StartView_aFolderThatHoldsOne;
	public static String StartView_anArchiveThatOthersWork;
	public static String StartView_anEmptyFolderToTake;
	public static String StartView_copyFromARemote;
	public static String StartView_newArchive;
	public static String StartView_noArchiveIsOpen;
	public static String StartView_openAnArchive;
	public static String StartView_openedBefore;
	public static String StartView_openTheDemo;
	public static String StartView_theInventedMarrowQuayMuseums;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
