package org.cairnfield.report.internal.picture;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AgeingPicture_after;
	public static String AgeingPicture_errorOfOlderMapsOn;
	public static String AgeingPicture_meanErrorM;
	public static String AgeingPicture_months;
	public static String AgeingPicture_monthsSince;
	public static String ClusterSizesPicture_allSamples;
	public static String ClusterSizesPicture_clusters;
	public static String ClusterSizesPicture_clusterSizesBeforeAndAfter;
	public static String ClusterSizesPicture_inClusters;
	public static String ClusterSizesPicture_others;
	public static String ClusterSizesPicture_samplesBeforeAndAfter;
	public static String ClusterSizesPicture_theLargestClusters;
	public static String ClusterSizesPicture_these;
	public static String ErrorDistributionPicture_cutAtBeyondWhichAre;
	public static String ErrorDistributionPicture_halfWithin95WithinLargest;
	public static String ErrorDistributionPicture_horizontalErrorM;
	public static String ErrorDistributionPicture_horizontalPositionErrors;
	public static String ErrorDistributionPicture_percentilesBy;
	public static String ErrorDistributionPicture_shareOfPositionsWithin;
	public static String KDistancePicture_chosenExceededByOfThe;
	public static String KDistancePicture_distance;
	public static String KDistancePicture_distanceToTheSampleSorted;
	public static String KDistancePicture_elbowAt;
	public static String KDistancePicture_fromToOverSamples;
	public static String KDistancePicture_nearest;
	public static String KDistancePicture_noElbow;
	public static String KDistancePicture_samplesInOrderOfThat;
	public static String MethodPicture_andOnAverage;
	public static String MethodPicture_errorAndMatchTimeBoth;
	public static String MethodPicture_errorsAboveStandAtThe;
	public static String MethodPicture_errorTime;
	public static String MethodPicture_map;
	public static String MethodPicture_maps;
	public static String MethodPicture_matchTimeToPlainMatching;
	public static String MethodPicture_meanErrorToPlainMatching;
	public static String MethodPicture_toPlainMatchingOnAverage;
	public static String SplitShapesPicture_cluster;
	public static String SplitShapesPicture_clusters;
	public static String SplitShapesPicture_clustersInTurn;
	public static String SplitShapesPicture_clustersLargestFirstAndNoise;
	public static String SplitShapesPicture_clustersTooSmallToDraw;
	public static String SplitShapesPicture_largest;
	public static String SplitShapesPicture_noise;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
