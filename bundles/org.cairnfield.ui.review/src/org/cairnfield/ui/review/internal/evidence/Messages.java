package org.cairnfield.ui.review.internal.evidence;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String EvidencePane_computingTheEvidence;
	public static String EvidencePane_evidenceOnTheSampleIn;
	public static String EvidencePane_floorXMYM;
	public static String EvidencePane_isGoneFromTheArchive;
	public static String EvidencePane_takeUpASampleOf;
	public static String EvidenceText_advice;
	public static String EvidenceText_areItsReadingsSound;
	public static String EvidenceText_bestClusterWithRBelow;
	public static String EvidenceText_carrier;
	public static String EvidenceText_clusterStrengthRMargin;
	public static String EvidenceText_db;
	public static String EvidenceText_doesItBelongThere;
	public static String EvidenceText_doubtOfAllSamplesAre;
	public static String EvidenceText_doubtOfAllSamplesAre2;
	public static String EvidenceText_enteredBy;
	public static String EvidenceText_isItsPlaceRight;
	public static String EvidenceText_itCorrelatesWithNoLabelled;
	public static String EvidenceText_levelDeficitToThemScatter;
	public static String EvidenceText_lookCloser;
	public static String EvidenceText_moveToCluster;
	public static String EvidenceText_nearestLabelledSampleCluster;
	public static String EvidenceText_noneOfItIsHere;
	public static String EvidenceText_noProposal;
	public static String EvidenceText_nothingAgainstIt;
	public static String EvidenceText_ofSurvey;
	public static String EvidenceText_ofTheClusterOnThis;
	public static String EvidenceText_onAnotherFloor;
	public static String EvidenceText_onThisFloor;
	public static String EvidenceText_outOfTheMap;
	public static String EvidenceText_overlapOfAccessPointsWith;
	public static String EvidenceText_rSaysWhereItFits;
	public static String EvidenceText_sampleOrEvidenceHasChanged;
	public static String EvidenceText_secondReview;
	public static String EvidenceText_secondReview2;
	public static String EvidenceText_settlingTheTwo;
	public static String EvidenceText_somebodyElseHasDecidedTheir;
	public static String EvidenceText_theEffectsOfHomesAre;
	public static String EvidenceText_tookItBack;
	public static String EvidenceText_toTheClusterOnThis;
	public static String EvidenceText_toThePool;
	public static String EvidenceText_verdicts;
	public static String EvidenceText_whatHearsTheSameOf;
	public static String HomeRow_noChange;
	public static String HomeRow_noneAsked;
	public static String HomesTable_change;
	public static String HomesTable_changeOfTheErrorAt;
	public static String HomesTable_cost;
	public static String HomesTable_errorThereM;
	public static String HomesTable_fingerprintsComparedMorePerQuery;
	public static String HomesTable_heldOutTrainingPositionsThat;
	public static String HomesTable_home;
	public static String HomesTable_theClusterProposedThatOf;
	public static String HomesTable_whatEachHomeWouldDo;
	public static String PairPane_hasNoSuchSampleBeside;
	public static String PairPane_ofAccessPointsSharedOverlap;
	public static String PairPane_rOfTheirLevels;
	public static String PairPane_strengthROfDistancesTo;
	public static String PairPane_takeUpASampleOf;
	public static String PairPane_theLabelledSampleThatIt;
	public static String PairPane_theLabelledSampleWhoseFingerprint;
	public static String PairPane_tooFewSharedToCorrelate;
	public static String PairPane_twoFingerprints;
	public static String PairPane_withItsCarrier;
	public static String PairPane_withTheNearestLabelledSample;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
