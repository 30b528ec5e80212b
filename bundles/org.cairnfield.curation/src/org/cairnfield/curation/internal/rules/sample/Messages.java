package org.cairnfield.curation.internal.rules.sample;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String ContradictorySamplesRule_015Finds075;
	public static String ContradictorySamplesRule_05And2Find;
	public static String ContradictorySamplesRule_aboveNoiseOf3Db;
	public static String ContradictorySamplesRule_accessPointsThatBothMust;
	public static String ContradictorySamplesRule_aMiddleOfFewerIs;
	public static String ContradictorySamplesRule_andStandAtAtThe;
	public static String ContradictorySamplesRule_contradictedAtTheSamePlace;
	public static String ContradictorySamplesRule_keepTheFirst;
	public static String ContradictorySamplesRule_keepTheSecond;
	public static String ContradictorySamplesRule_levelsApart;
	public static String ContradictorySamplesRule_middleDifferenceOverAccessPoints;
	public static String ContradictorySamplesRule_nobodyHearsTwoWorldsAt;
	public static String ContradictorySamplesRule_samePlaceSameTimeOther;
	public static String ContradictorySamplesRule_samplesHaveNoTimes;
	public static String ContradictorySamplesRule_setAsideBoth;
	public static String ContradictorySamplesRule_shareOfAccessPointsThat;
	public static String ContradictorySamplesRule_takenForTheSameTime;
	public static String DuplicateSurveyRule_005And015;
	public static String DuplicateSurveyRule_2And10FindThe;
	public static String DuplicateSurveyRule_aSurveyTakenInTwice;
	public static String DuplicateSurveyRule_bothCameFromTheSame;
	public static String DuplicateSurveyRule_copyOf;
	public static String DuplicateSurveyRule_copyOfASampleOf;
	public static String DuplicateSurveyRule_everySampleThenFindsIts;
	public static String DuplicateSurveyRule_ofInAgreeWithSamples;
	public static String DuplicateSurveyRule_ofTheSmallerSurveyFrom;
	public static String DuplicateSurveyRule_samplesThatBothHold;
	public static String DuplicateSurveyRule_shareOfTheLater;
	public static String ExactDuplicateRule_aCopyAddsNoMeasurement;
	public static String ExactDuplicateRule_copyOfAnotherSample;
	public static String ExactDuplicateRule_noiseOf1DbLets;
	public static String ExactDuplicateRule_ofInPlaceTimeAnd;
	public static String ExactDuplicateRule_readingsThatMustAgreeWhere;
	public static String ExactDuplicateRule_theSameSampleTwice;
	public static String FewReadingsRule_005And015;
	public static String FewReadingsRule_accessPoint;
	public static String FewReadingsRule_accessPointsThatASample;
	public static String FewReadingsRule_aSampleThatHearsOne;
	public static String FewReadingsRule_heardFewerThan;
	public static String FewReadingsRule_heardNothing;
	public static String FewReadingsRule_heardTooFewAccessPoints;
	public static String FewReadingsRule_ofIn;
	public static String FewReadingsRule_samplesThatHeardNothingOr;
	public static String FewReadingsRule_shareOfSuchSamplesFrom;
	public static String FewReadingsRule_threeDistancesFixAPlace;
	public static String JumpRule_005And015;
	public static String JumpRule_1GivesAPrecisionOf;
	public static String JumpRule_2And8FindAs;
	public static String JumpRule_allowedBeyondThatForNoting;
	public static String JumpRule_allowedForTheClock;
	public static String JumpRule_andFromFloorTo;
	public static String JumpRule_aStretchOfAWalk;
	public static String JumpRule_aSurveyorCannotBeAt;
	public static String JumpRule_beyondAWalk;
	public static String JumpRule_cannotBeReachedOnFoot;
	public static String JumpRule_clearlyMoreThanTheOther;
	public static String JumpRule_fasterThanAPersonWalks;
	public static String JumpRule_fromToInItIs;
	public static String JumpRule_leastTimeFromOneFloor;
	public static String JumpRule_ofAsideInSFrom;
	public static String JumpRule_ofStepsOfAreFaster;
	public static String JumpRule_oneEndIsBlamedAlone;
	public static String JumpRule_samplesHaveNoTimes;
	public static String JumpRule_shareOfSuchStepsFrom;
	public static String JumpRule_stepsBetweenAJumpAnd;
	public static String JumpRule_timesAreOftenCutTo;
	public static String JumpRule_walkingAtFullSpeedFrom;
	public static String JumpRule_walkingSpeedNotExceeded;
	public static String OneScanTwoPlacesRule_025And1Find;
	public static String OneScanTwoPlacesRule_aFingerprintThatStandsAt;
	public static String OneScanTwoPlacesRule_farthestApart;
	public static String OneScanTwoPlacesRule_inAtPlacesMoreThan;
	public static String OneScanTwoPlacesRule_keepTheFirstOfEach;
	public static String OneScanTwoPlacesRule_noiseOf1DbLets;
	public static String OneScanTwoPlacesRule_oneScanAtTwoPlaces;
	public static String OneScanTwoPlacesRule_oneScanStands;
	public static String OneScanTwoPlacesRule_placesFartherApartThanThis;
	public static String OneScanTwoPlacesRule_readingsThatMustAgree;
	public static String OneScanTwoPlacesRule_scansStandEach;
	public static String OneScanTwoPlacesRule_setAsideAllOfThem;
	public static String OneScanTwoPlacesRule_theFarthestOnOneFloor;
	public static String OneScanTwoPlacesRule_theSameScanStandsAt;
	public static String OutsideOutlineRule_05And2Find;
	public static String OutsideOutlineRule_farthestOutside;
	public static String OutsideOutlineRule_floor;
	public static String OutsideOutlineRule_howFarOutsideIsStill;
	public static String OutsideOutlineRule_nobodyStoodThereThePosition;
	public static String OutsideOutlineRule_noFloorOfHasAn;
	public static String OutsideOutlineRule_ofOnOutsideItsOutline;
	public static String OutsideOutlineRule_outsideTheFloorSOutline;
	public static String OutsideOutlineRule_outsideTheFloorSOutline2;
	public static String RepeatedScanRule_aDeviceThatHandsOut;
	public static String RepeatedScanRule_atAnotherPlace;
	public static String RepeatedScanRule_averageTheScansOfEach;
	public static String RepeatedScanRule_keepOneOfEachRun;
	public static String RepeatedScanRule_keepTheFirstOfEach;
	public static String RepeatedScanRule_noiseOf1DbLets;
	public static String RepeatedScanRule_ofInHoldExactlyThe;
	public static String RepeatedScanRule_onePlaceScannedAgainAnd;
	public static String RepeatedScanRule_readingsThatMustAgree;
	public static String RepeatedScanRule_repeatedScans;
	public static String RepeatedScanRule_repeatsTheScanBefore;
	public static String UnknownFloorRule_noPlanShowsTheseSamples;
	public static String UnknownFloorRule_ofOnFloorWhichDoes;
	public static String UnknownFloorRule_onAFloorThatDoes;
	public static String UnknownFloorRule_theFloorsOfTheSite;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
