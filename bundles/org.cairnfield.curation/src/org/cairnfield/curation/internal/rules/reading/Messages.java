package org.cairnfield.curation.internal.rules.reading;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String LevelsApartRule_accessPoint;
	public static String LevelsApartRule_aFactorOfAThousand;
	public static String LevelsApartRule_contradictoryLevelsAtOnePlace;
	public static String LevelsApartRule_farFromTheOtherSamples;
	public static String LevelsApartRule_farthestApart;
	public static String LevelsApartRule_fromLowestToHighestLevel;
	public static String LevelsApartRule_inAndMoreFarFrom;
	public static String LevelsApartRule_inAtLevelsDbApart;
	public static String LevelsApartRule_readingsOfASampleThat;
	public static String LevelsApartRule_samplesWithOneStrayReading;
	public static String LevelsApartRule_twoLevelsThirtyDbApart;
	public static String NotHeardCodeRule_100105And110Are;
	public static String NotHeardCodeRule_10And40FindThe;
	public static String NotHeardCodeRule_4And16FindThe;
	public static String NotHeardCodeRule_accessPoint;
	public static String NotHeardCodeRule_accessPointsWithTheCode;
	public static String NotHeardCodeRule_aCodeForNotHeard;
	public static String NotHeardCodeRule_dbmOccursInOfOf;
	public static String NotHeardCodeRule_dbmStandsForNotHeard;
	public static String NotHeardCodeRule_howManyTimesAsOften;
	public static String NotHeardCodeRule_levelsLookedAtBeside0;
	public static String NotHeardCodeRule_levelsOnEitherSideThat;
	public static String NotHeardCodeRule_mostAtALevelBeside;
	public static String NotHeardCodeRule_noiseInAReceiverSpreads;
	public static String NotHeardCodeRule_oneOrTwoMayBe;
	public static String NotHeardCodeRule_readingsAtThatLevel;
	public static String NotHeardCodeRule_whatStandsForNotHeard;
	public static String OutOfRangeRule_accessPoint;
	public static String OutOfRangeRule_aLevelBelowTheReceiver;
	public static String OutOfRangeRule_belowWhatAReceiverCan;
	public static String OutOfRangeRule_highestPlausibleLevel;
	public static String OutOfRangeRule_levelsOutsideThePlausibleRange;
	public static String OutOfRangeRule_lowestPlausibleLevel;
	public static String OutOfRangeRule_of20DbmTheMost;
	public static String OutOfRangeRule_ofDbmDbmOf;
	public static String OutOfRangeRule_thermalNoiseIn20Mhz;
	public static String OutOfRangeRule_tooStrong;
	public static String OutOfRangeRule_tooWeak;
	public static String SaturatedRule_10And40FindThe;
	public static String SaturatedRule_15FindsTheSame;
	public static String SaturatedRule_70FindsTheSame50;
	public static String SaturatedRule_accessPoint;
	public static String SaturatedRule_accessPointsAtTheLimit;
	public static String SaturatedRule_aFewLevelsSoThat;
	public static String SaturatedRule_aReceiverIsNotAt;
	public static String SaturatedRule_aStrayOrTwoNot;
	public static String SaturatedRule_howManyTimesAsOften;
	public static String SaturatedRule_levelsAtTheReceiverS;
	public static String SaturatedRule_levelsBelowTheLimitThat;
	public static String SaturatedRule_mostAtALevelBelow;
	public static String SaturatedRule_ofReadDbmTheHighest;
	public static String SaturatedRule_oneOrTwoMayHang;
	public static String SaturatedRule_readingsAtTheHighestLevel;
	public static String SaturatedRule_shareOfReadingsThatMay;
	public static String SaturatedRule_whereTheReceiverReadsIts;
	public static String StrayReadings_byDbAtOnFloor;
	public static String StuckLevelRule_aLevelThatNeverChanges;
	public static String StuckLevelRule_at4PlacesEverySecond;
	public static String StuckLevelRule_belowWhatAReceiverCan;
	public static String StuckLevelRule_oneAccessPointAtOne;
	public static String StuckLevelRule_placesAtWhichItWas;
	public static String StuckLevelRule_readsDbmInAllOf;
	public static String StuckLevelRule_theLevelOfIsStuck;
	public static String StuckLevelRule_weakerLevelsAreCodesWhich;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
