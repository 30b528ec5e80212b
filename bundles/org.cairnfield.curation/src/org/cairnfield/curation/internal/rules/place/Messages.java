package org.cairnfield.curation.internal.rules.place;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String FloorVotes_boundsTheWork;
	public static String FloorVotes_moreThanHalfOfSeven;
	public static String FloorVotes_neighboursInSignalSpaceThat;
	public static String FloorVotes_oddAndEnoughForSix;
	public static String FloorVotes_roundsOfJudgingAtMost;
	public static String FloorVotes_votesForAnotherFloorBy;
	public static String SwappedAxes_aMajorityOfFive;
	public static String SwappedAxes_aSampleJoinsItsRun;
	public static String SwappedAxes_asForWrongFloor;
	public static String SwappedAxes_asNotedFartherOffThan;
	public static String SwappedAxes_aStretchOfAWalk;
	public static String SwappedAxes_asUsualOnASite;
	public static String SwappedAxes_betweenOnePlaceAndThe;
	public static String SwappedAxes_beyondWhatIsUsualOn;
	public static String SwappedAxes_boundsTheWork;
	public static String SwappedAxes_exchangedFartherOffThanUsual;
	public static String SwappedAxes_fewEnoughToBeNear;
	public static String SwappedAxes_howManyTimesLessAlike;
	public static String SwappedAxes_lessThanTheDistanceBetween;
	public static String SwappedAxes_neighboursInSignalSpaceThat;
	public static String SwappedAxes_ofThemAtLeast;
	public static String SwappedAxes_roundsOfJudgingAtMost;
	public static String SwappedAxes_samplesBetweenTwoOfOne;
	public static String SwappedAxes_stepsInARunIn;
	public static String SwappedAxesRule_2And6FindThe;
	public static String SwappedAxesRule_2And8FindThe;
	public static String SwappedAxesRule_asNoted;
	public static String SwappedAxesRule_aStretchNotedWithX;
	public static String SwappedAxesRule_howMuchNearerItsNeighbours;
	public static String SwappedAxesRule_inARowOfOn;
	public static String SwappedAxesRule_placesInARow;
	public static String SwappedAxesRule_xAndYExchanged;
	public static String Unlikeness_aboutTheWeakestThatHandsets;
	public static String Unlikeness_asManyAsAroundThe;
	public static String Unlikeness_differenceThatCountsAsNone;
	public static String Unlikeness_enoughToFindFiveOf;
	public static String Unlikeness_fewEnoughToBeNear;
	public static String Unlikeness_levelAtWhichValuesBegin;
	public static String Unlikeness_levelsComeInWholeDb;
	public static String Unlikeness_neighboursInSignalSpaceThat;
	public static String Unlikeness_spotsAroundAPlaceThat;
	public static String Unlikeness_spotsAroundAPlaceThat2;
	public static String WrongFloorRule_1GivesAPrecisionOf;
	public static String WrongFloorRule_2FindsTheSame0;
	public static String WrongFloorRule_4GivesAPrecisionOf;
	public static String WrongFloorRule_accessPointsThatASample;
	public static String WrongFloorRule_allSamplesOfAreOn;
	public static String WrongFloorRule_aSampleOnTheWrong;
	public static String WrongFloorRule_fewerDoNotTellFloors;
	public static String WrongFloorRule_floorContradictedByWhatWas;
	public static String WrongFloorRule_howManyTimesLessAlike;
	public static String WrongFloorRule_lessAlike;
	public static String WrongFloorRule_of7NeighboursThatAgree;
	public static String WrongFloorRule_ofNotedOnFloorWhat;
	public static String WrongFloorRule_ofThemOnTheSample;
	public static String WrongFloorRule_oneOrTwoStraysDo;
	public static String WrongFloorRule_soundSamplesThatARun;
	public static String WrongFloorRule_votesForFloor;
	public static String WrongPlaceRule_125FindsTheSame;
	public static String WrongPlaceRule_1GivesAPrecisionOf;
	public static String WrongPlaceRule_5FindsTheSame20;
	public static String WrongPlaceRule_aboutTheDistanceBetweenPlaces;
	public static String WrongPlaceRule_accessPointsThatASample;
	public static String WrongPlaceRule_aMajorityOfFiveAnd;
	public static String WrongPlaceRule_aNeighbourSoNearSpeaks;
	public static String WrongPlaceRule_aSampleNotedAtThe;
	public static String WrongPlaceRule_distanceToItsNeighboursAt;
	public static String WrongPlaceRule_distanceToNeighbours;
	public static String WrongPlaceRule_fewEnoughToBeNear;
	public static String WrongPlaceRule_fewerDoNotTellPlaces;
	public static String WrongPlaceRule_howManyTimesLessAlike;
	public static String WrongPlaceRule_lessAlike;
	public static String WrongPlaceRule_neighboursInSignalSpaceThat;
	public static String WrongPlaceRule_noSampleOfHasEnough;
	public static String WrongPlaceRule_ofIsNotedAt;
	public static String WrongPlaceRule_ofThemAtLeast;
	public static String WrongPlaceRule_ofToAreNoted;
	public static String WrongPlaceRule_oneStrayDoesNotEnd;
	public static String WrongPlaceRule_onFloorTheSamplesThat;
	public static String WrongPlaceRule_placeContradictedByWhatWas;
	public static String WrongPlaceRule_placeContradictedByWhatWas2;
	public static String WrongPlaceRule_soundSamplesThatARun;
	public static String WrongPlaceRule_spreadOfNeighbours;
	public static String WrongPlaceRule_timesTheSiteSUsual;
	public static String WrongPlaceRule_usualDistance;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
