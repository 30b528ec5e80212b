package org.cairnfield.curation.study;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AffinityContender_landmarksTheOthersWithThe;
	public static String AffinityContender_notAtRestAfterRounds;
	public static String AffinityContender_preferenceTheMedianSimilarity;
	public static String CommonPractice_directionMetLess;
	public static String CommonPractice_directionMetMore;
	public static String CommonPractice_droppingNoiseRaisesTheMean;
	public static String CommonPractice_givingCorrelatedNoiseBackTakes;
	public static String CommonPractice_notMet;
	public static String CommonPractice_principalComponentsOnTopMultiply;
	public static String CommonPractice_splittingNoiseDroppedCutsMatch;
	public static String CommonPractice_thatCostsAboutATenth;
	public static String CommonPractice_theSameInFingerprintsCompared;
	public static String DbscanContender_atOfTheKDistance;
	public static String DbscanContender_ofTheVariance;
	public static String DbscanContender_tooLarge;
	public static String FewerAccessPoints_accessPointsMComparedBytes;
	public static String FewerAccessPoints_noSamplesAreCloseEnough;
	public static String FewerAccessPoints_tellsLittleThatOthersDo;
	public static String FewerAccessPoints_thereAreSamplesToJudge;
	public static String KernelContender_aGaussianProcess;
	public static String KernelContender_directions;
	public static String KernelContender_directions2;
	public static String KernelContender_kernelReduction;
	public static String KernelContender_kernelScores;
	public static String KernelContender_tooLarge;
	public static String MapUnderStudy_noMethodWasTriedThat;
	public static String MapUnderStudy_noSamplesAreCloseEnough;
	public static String MapUnderStudy_theMapHasTooFew;
	public static String MethodSplits_bestOfTriedOnHeld;
	public static String MethodSplits_dbscanIsWhatIsKept;
	public static String MethodSplits_findsNothing;
	public static String MethodSplits_heldOutErrorByMethod;
	public static String MethodSplits_itIsAChoiceNot;
	public static String MethodSplits_itLeavesAccessPointsOut;
	public static String MethodSplits_itSplitsNothing;
	public static String MethodSplits_itsZonesOverlapAndA;
	public static String MethodSplits_mAtOfTheComparisons;
	public static String MethodSplits_noSamplesAreCloseEnough;
	public static String MethodSplits_skipped;
	public static String MethodSplits_tooSlowNotDoneIn;
	public static String OrthogonalContender_accessPoints;
	public static String OrthogonalContender_ofAccessPoints;
	public static String OrthogonalContender_orthogonalSearch;
	public static String RegressedSearchable_landmarksNothingIsSplitAnd;
	public static String Study_tooSlowNotDoneIn;
	public static String StudyListener_aboutMin;
	public static String StudyListener_aboutS;
	public static String StudyListener_left;
	public static String StudyListener_of;
	public static String StudyMap_aStudyNeedsSamplesOf;
	public static String StudyMethod_accessPointsThatExplainThe;
	public static String StudyMethod_affinityPropagation;
	public static String StudyMethod_dbscanNoiseDropped;
	public static String StudyMethod_dbscanOnPrincipalComponents;
	public static String StudyMethod_directionsThatCarryThePlace;
	public static String StudyMethod_kMeansWithZonesThat;
	public static String StudyMethod_theBestOfAllMethods;
	public static String StudyMethod_theSameSplitNoiseIn;
	public static String StudyMethod_theSameSplitNoiseWith;
	public static String ZonesContender_aSampleIsInZones;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
