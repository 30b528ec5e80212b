package org.cairnfield.ui.internal.timeline;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String AgeingChart_errorOverTime;
	public static String AgeingChart_howFarOffOlderMaps;
	public static String AgeingChart_meanError;
	public static String AgeingChart_monthsSince;
	public static String CourseTable_accessPointsOverTime;
	public static String CourseTable_ofPlacesMedianDbm;
	public static String CourseTable_shareOfPlacesWhereIt;
	public static String CourseTable_whichAccessPointsEachSurvey;
	public static String RemedyPane_95OfTheChange;
	public static String RemedyPane_after;
	public static String RemedyPane_applyTheRemedy;
	public static String RemedyPane_before;
	public static String RemedyPane_better;
	public static String RemedyPane_helpsMostHalfOfThe;
	public static String RemedyPane_measured;
	public static String RemedyPane_noGain;
	public static String RemedyPane_nothingHelpsLeaveTheMap;
	public static String RemedyPane_placesMNumberedOnThe;
	public static String RemedyPane_planTheNextWalk;
	public static String RemedyPane_remedy;
	public static String RemedyPane_saveTheWalk;
	public static String RemedyPane_toM;
	public static String RemedyPane_whatCanBeDoneAbout;
	public static String RemedyPane_whatItDoes;
	public static String RemedyPane_worse;
	public static String TimelinePane_cancel;
	public static String TimelinePane_comparesTheTrainingSurveysOf;
	public static String TimelinePane_compareSurveys;
	public static String TimelinePane_comparing;
	public static String TimelinePane_comparingTheSurveysOf;
	public static String TimelinePane_openAnArchiveToSee;
	public static String TimelinePane_site;
	public static String TimelinePane_theArchiveHasChangedSince;
	public static String WalkPlanning_planningTheNextWalkOf;
	public static String WalkPlanning_pointsThatAPhoneCan;
	public static String WalkPlanning_saveTheWalkOfThe;
	public static String WalkPlanning_savingTheWalkOf;
	public static String WalkPlanning_tableCsv;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
