package org.cairnfield.curation.measure;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Measures_approvedInClusters;
	public static String Measures_approvedInClustersAndPool;
	public static String Measures_asTheDevicePackHas;
	public static String Measures_noDevicePackHoldsIt;
	public static String ReleasedMap_nothingIsSplitDevicesCompare;
	public static String ReleasedMap_ofSamplesLieOutsideThe;
	public static String ReleasedMap_samplesOfSplitAreNot;
	public static String ReleasedMap_samplesOfTheMapCame;
	public static String ReleasedMap_theSplitHasNoCluster;
	public static String SideBySide_floor;
	public static String SplitFacts_clustersNoiseFingerprintsCompared;
	public static String SplitFacts_meanErrorMToM;
	public static String SplitFacts_noClusterToSearch;
	public static String SplitFacts_trainingSamplesBlocksOfPositions;
	public static String TestRun_nearestClusterNearestSampleIn;
	public static String TestRun_nearestSampleOfTheWhole;
	public static String TestRun_threeNearestSamplesOfThe;
	public static String Way_release;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
