package org.cairnfield.curation.split;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AddSplitsCommand_keepSplit;
	public static String AddSplitsCommand_keepSplits;
	public static String HeldOutErrors_trainingSamplesHeldOutBy;
	public static String ReducedPoints_theSurveyCannotBeReduced;
	public static String RemoveSplitCommand_removeSplit;
	public static String SetSearchCommand_setByHand;
	public static String SetSearchCommand_setTheSearchOfSplit;
	public static String SplitMaker_1ValueOf;
	public static String SplitMaker_asAskedFor;
	public static String SplitMaker_isLeftOut;
	public static String SplitMaker_leftOutForWantOf;
	public static String SplitMaker_minpts;
	public static String SplitMaker_noFloorWithinHasSamples;
	public static String SplitMaker_noSamplesAreCloseEnough;
	public static String SplitMaker_nothingToChooseFrom;
	public static String SplitMaker_noTimeToTryA;
	public static String SplitMaker_ofTriedOnHeldOut;
	public static String SplitMaker_pickedByHand;
	public static String SplitMaker_theArchiveHasNoSite;
	public static String SplitMaker_thePublishedMethod;
	public static String SplitMaker_thePublishedMethodSinceSearches;
	public static String SplitMaker_valuesOf;
	public static String SplitOnMap_theMapHasOnlyOf;
	public static String SplitScopes_archive;
	public static String SplitScopes_floor;
	public static String SplitsInRelease_aReleaseTakesSplitsOf;
	public static String SplitsInRelease_takeForTheNextRelease;
	public static String SplitsInRelease_theArchiveHasNoSplit;
	public static String SplitStudies_aSplitNeedsTwoSamples;
	public static String SplitStudy_andSearchAre;
	public static String SplitStudy_aSearchIs;
	public static String SplitStudy_errorsOfASweepAre;
	public static String SplitStudy_giveMoreTimeOrAnd;
	public static String SplitStudy_notHadOfAMap;
	public static String TriedSearches_asAllSplitsBeforeThere;
	public static String TriedSearches_oneCut;
	public static String TriedSearches_oneLevel;
	public static String TriedSearches_twoCut;
	public static String TriedSearches_twoLevels;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
