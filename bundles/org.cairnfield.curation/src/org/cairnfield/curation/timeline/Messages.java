package org.cairnfield.curation.timeline;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AgeingCurves_firstSurvey;
	public static String AgeingCurves_release;
	public static String AgeingCurves_surveysOfTheDateBefore;
	public static String AgeRemedies_measuredAnewOn;
	public static String AgeRemedies_notHeardOnWhereIt;
	public static String AgeRemedies_replacedBy;
	public static String AgeRemedy_makesPositionsBetter;
	public static String AgeRemedy_makesPositionsWorse;
	public static String AgeRemedy_mBeforeMAfter95;
	public static String AgeRemedy_measuredNoGain;
	public static String AgeRemedyKind_correctTheNewerDevice;
	public static String AgeRemedyKind_countReplacedAsSuccessors;
	public static String AgeRemedyKind_replaceRevisitedSamples;
	public static String AgeRemedyKind_setVanishedOnesAside;
	public static String AgeRemedyKind_startTheMapAnew;
	public static String Course_comesAndGoes;
	public static String MapAge_accessPoint;
	public static String MapAge_aMapWithoutItIs;
	public static String MapAge_hearsAllAccessPointsThat;
	public static String MapAge_noLongerHearsOfThe;
	public static String MapAge_of;
	public static String MapAge_ofOtherDaysLeftOut;
	public static String MapAge_ofTo;
	public static String MapAge_surveys;
	public static String MapAge_theLatestSurveyOf;
	public static String MapAge_theSurveysHaveNoDate;
	public static String NextPlace_dayOld;
	public static String NextPlace_daysOld;
	public static String NextPlace_foundMTooFarOff;
	public static String NextPlace_noSampleWithinM;
	public static String NextPlace_ofItsAccessPointsGone;
	public static String NextPlace_toCheck;
	public static String TimelineStudy_comparingSurveys;
	public static String TimelineTable_goneBy;
	public static String TimelineTable_movedBy;
	public static String TimelineTable_newBy;
	public static String TimelineTable_replacedByBy;
	public static String TimelineWords_accessPoint;
	public static String TimelineWords_aMapOfTheSurveys;
	public static String TimelineWords_atMostMInQuiet;
	public static String TimelineWords_changedBy;
	public static String TimelineWords_noAccessPointGoneNew;
	public static String TimelineWords_noSurveyTellsOfA;
	public static String TimelineWords_noTrainingSurveyOfThis;
	public static String TimelineWords_thereIsOneSurveyOnly;
	public static String WalkFiles_placesToMeasureNext;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
