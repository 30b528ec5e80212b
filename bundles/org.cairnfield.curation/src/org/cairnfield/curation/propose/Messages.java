package org.cairnfield.curation.propose;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Advice_approve;
	public static String Advice_leaveItOutItMakes;
	public static String Advice_moveToClusterPositionsAre;
	public static String Advice_noneNoClusterIsProposed;
	public static String Advice_noPositionChanges;
	public static String Advice_nothingMeasurableSpeaksAgainstIt;
	public static String Advice_positionsGetMeasurablyBetter;
	public static String AdviceRates_suchAdviceWasRightIn;
	public static String AdviceRates_tooFewCasesToSay;
	public static String Band_rFrom;
	public static String Band_rFromToBelow;
	public static String Outlooks_fromTrainingPositionsBlocksOf;
	public static String QueueOrder_cluster;
	public static String QueueOrder_distanceOnTheFloor;
	public static String QueueOrder_effectOnError;
	public static String QueueOrder_margin;
	public static String QueueOrder_markedFirst;
	public static String QueueOrder_place;
	public static String QueueOrder_readings;
	public static String QueueOrder_sample;
	public static String QueueOrder_strengthR;
	public static String SetProposalsCommand_noiseSample;
	public static String SetProposalsCommand_noiseSamples;
	public static String SetProposalsCommand_proposeClustersFor;
	public static String Warning_anotherClusterFitsAlmostAs;
	public static String Warning_clusterHasNoSampleOn;
	public static String Warning_itsNearestLabelledSampleIs;
	public static String Warning_itsPlaceMayBeWrong;
	public static String Warning_itsReadingsMayBeWrong;
	public static String Warning_noLabelledSampleIsNear;
	public static String Warning_otherFloor;
	public static String Warning_theClusterSNearestSample;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
