package org.cairnfield.exchange.pack;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String DevicePack_aDevicePackHoldsFloors;
	public static String PackCheck_accessPoints;
	public static String PackCheck_accessPointsDoNotAscend;
	public static String PackCheck_aClusterDoesNotBegin;
	public static String PackCheck_aClusterIsInNo;
	public static String PackCheck_aGroupHasACluster;
	public static String PackCheck_aListHasAColumn;
	public static String PackCheck_anOriginIsTooFar;
	public static String PackCheck_aSampleIsAtNo;
	public static String PackCheck_codeOfALevel;
	public static String PackCheck_doNotBeginWhereThe;
	public static String PackCheck_groupsInVersion1;
	public static String PackCheck_isNot1To;
	public static String PackCheck_itEndsTooEarly;
	public static String PackCheck_noGroup;
	public static String PackCheck_numberOfClustersSearched;
	public static String PackCheck_numberOfGroupsEntered;
	public static String PackCheck_numberOfPartsThatCentroids;
	public static String PackCheck_numberOfVoters;
	public static String PackCheck_somethingFollowsTheSamples;
	public static String PackCheck_stepOfLevels;
	public static String PackCheck_sumOfACentroidIs;
	public static String PackCheck_theClustersHaveAnotherNumber;
	public static String PackCheck_theLowestLevelIsNot;
	public static String PackCheck_theUnitOfPositionsIs;
	public static String PackedMap_aPositionIsTooFar;
	public static String PackedMap_aSiteIsTooLarge;
	public static String PackWriter_accessPoints;
	public static String PackWriter_aDevicePackEndsAt;
	public static String PackWriter_aDevicePackHoldsAt;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
