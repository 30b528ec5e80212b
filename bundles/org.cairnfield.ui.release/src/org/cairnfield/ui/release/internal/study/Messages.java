package org.cairnfield.ui.release.internal.study;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String MethodTable_compared;
	public static String MethodTable_errorToPlain;
	public static String MethodTable_fingerprintsComparedForOnePosition;
	public static String MethodTable_how;
	public static String MethodTable_intervalOfThatRatio;
	public static String MethodTable_madeIn;
	public static String MethodTable_matchTime;
	public static String MethodTable_meanErrorToThatOf;
	public static String MethodTable_meanErrorToThatOf2;
	public static String MethodTable_method;
	public static String MethodTable_methodsSideBySide;
	public static String MethodTable_ofTheMeanErrorMean;
	public static String MethodTable_onOfMaps;
	public static String MethodTable_processorTimeOfAMatch;
	public static String MethodTable_rank;
	public static String MethodTable_rightFloor;
	public static String MethodTable_sharePutOnTheRight;
	public static String MethodTable_skipped;
	public static String MethodTable_timeThatMakingTheMap;
	public static String MethodTable_toPlain3w;
	public static String StudyCharts_chooseAMapToSee;
	public static String StudyCharts_clusterLargestFirst;
	public static String StudyCharts_clusterSizes;
	public static String StudyCharts_errorAndMatchTime;
	public static String StudyCharts_errorOverMatchTimeA;
	public static String StudyCharts_matchTimeToPlain;
	public static String StudyCharts_meanErrorToPlain;
	public static String StudyCharts_noise;
	public static String StudyCharts_noSplitOfThisMap;
	public static String StudyCharts_samples;
	public static String StudyPane_add;
	public static String StudyPane_allMapsMeans;
	public static String StudyPane_aMethodThatTakesLonger;
	public static String StudyPane_cancel;
	public static String StudyPane_cancelledWhatIsDoneIs;
	public static String StudyPane_chooseAFolderForStudy;
	public static String StudyPane_chooseTheFolderOfAn;
	public static String StudyPane_foldersWithSemicolonsBetweenThem;
	public static String StudyPane_keepAsASplit;
	public static String StudyPane_keepingASplitBy;
	public static String StudyPane_kept;
	public static String StudyPane_makingASplitBy;
	public static String StudyPane_measuredNoGainAllAccess;
	public static String StudyPane_measuringHowFewAccessPoints;
	public static String StudyPane_minutesForEachMethod;
	public static String StudyPane_minutesForEachMethodOn;
	public static String StudyPane_nothingCouldBeMeasured;
	public static String StudyPane_notKept;
	public static String StudyPane_ofTheMethodsThatSplit;
	public static String StudyPane_otherArchives;
	public static String StudyPane_readingTheMaps;
	public static String StudyPane_savedStudyHtmlStudyCsv;
	public static String StudyPane_saveTheReport;
	public static String StudyPane_saveTheReportOfThe;
	public static String StudyPane_setAccessPointsAsideBefore;
	public static String StudyPane_setsAccessPointsOfThe;
	public static String StudyPane_setsAllWaysOfSplitting;
	public static String StudyPane_setTheOthersAside;
	public static String StudyPane_show;
	public static String StudyPane_skippedSeeHow;
	public static String StudyPane_splitsTheArchiveOnShow;
	public static String StudyPane_studiedBesideTheArchiveOn;
	public static String StudyPane_study;
	public static String StudyPane_studyAnotherArchiveToo;
	public static String StudyPane_studyingWaysOfSplitting;
	public static String StudyPane_theReportWasNotSaved;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
