package org.cairnfield.curation.decide;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Agreement_saysNothingAsOneOf;
	public static String AuditPlan_failed;
	public static String AuditPlan_ofProposalsInBandLooked;
	public static String AuditPlan_thereIsNoBandThe;
	public static String CarryOver_carriedOverFromVerdict;
	public static String CarryOver_carrierIsNow;
	public static String CarryOver_carryOverFrom;
	public static String CarryOver_clusterWhereItWasMoved;
	public static String CarryOver_itIsNoiseNoLonger;
	public static String CarryOver_itIsNotKnownWhat;
	public static String CarryOver_itWasDecidedThereAlready;
	public static String CarryOver_itWasStaleAlready;
	public static String CarryOver_marginIsNow;
	public static String CarryOver_noClusterFitsNow;
	public static String CarryOver_noClusterFittedThen;
	public static String CarryOver_rIsNow;
	public static String CarryOver_theClusterHasOtherSamples;
	public static String CarryOver_theEvidenceHasChanged;
	public static String CarryOver_theNearestLabelledSampleAgrees;
	public static String CarryOver_theNearestLabelledSampleDiffers;
	public static String CarryOver_theSampleHasChanged;
	public static String CarryOver_theSplitDoesNotHave;
	public static String FaultySamples_faulty;
	public static String GiveVerdictsCommand_approve;
	public static String GiveVerdictsCommand_defer;
	public static String GiveVerdictsCommand_markAsFaulty;
	public static String GiveVerdictsCommand_move;
	public static String GiveVerdictsCommand_pool;
	public static String GiveVerdictsCommand_proposals;
	public static String GiveVerdictsCommand_reject;
	public static String GiveVerdictsCommand_takeBack;
	public static String ReasonCode_anEarlierVerdictIsTaken;
	public static String ReasonCode_anotherClusterFitsBetter;
	public static String ReasonCode_approvedWithItsBandAfter;
	public static String ReasonCode_itsPlaceIsWrong;
	public static String ReasonCode_itsReadingsAreNotSound;
	public static String ReasonCode_noClusterFits;
	public static String ReasonCode_somebodyHasToLookOn;
	public static String ReasonCode_somebodyWhoKnowsHasTo;
	public static String ReasonCode_theClusterIsOnAnother;
	public static String ReasonCode_theEvidenceAgrees;
	public static String ReasonCode_theReviewerKnowsThePlace;
	public static String ReasonCode_theSampleIsFaulty;
	public static String ReasonCode_tooFarFromTheCluster;
	public static String Review_aSampleLeavesTheMap;
	public static String Review_aVerdictCarriesTheName;
	public static String Review_beforeBandIsApprovedOf;
	public static String Review_clusterIsTheOneThat;
	public static String Review_doesNotWaitForA;
	public static String Review_isNotInTheMap;
	public static String Review_isNotNoiseInSplit;
	public static String Review_nothingIsProposedForIts;
	public static String Review_ofLookedAtInBand;
	public static String Review_sayWhyTheDisagreementAbout;
	public static String Review_splitHasNoClusterTo;
	public static String Review_theLastVerdictOnIs;
	public static String Review_thereIsNoDisagreementAbout;
	public static String Review_thereIsNone;
	public static String Review_youCanGiveOneThat;
	public static String Review_youGaveOneOfThe;
	public static String Review_youGaveTheFirstVerdict;
	public static String ReviewPolicy_theReviewPolicyOfThe;
	public static String ReviewState_setAside;
	public static String SetReviewPolicyCommand_setTheReviewPolicy;
	public static String VerdictIntake_aHomeIsGivenAnd;
	public static String VerdictIntake_aHomeIsGivenThough;
	public static String VerdictIntake_correctTheDecisionOrLeave;
	public static String VerdictIntake_exportTheTableAgainAnd;
	public static String VerdictIntake_fillInTheColumnPerson;
	public static String VerdictIntake_isNoDecision;
	public static String VerdictIntake_isNoNumberOfA;
	public static String VerdictIntake_isNoTime;
	public static String VerdictIntake_itsSampleLeaves;
	public static String VerdictIntake_keepOneOfTheTwo;
	public static String VerdictIntake_leaveTheColumnSampleAs;
	public static String VerdictIntake_line;
	public static String VerdictIntake_nobodyIsNamedWhoDecided;
	public static String VerdictIntake_sampleWasDecidedOnLine;
	public static String VerdictIntake_takeIn;
	public static String VerdictIntake_takeItInForThat;
	public static String VerdictIntake_theDecisionIsMoveAnd;
	public static String VerdictIntake_theEvidenceHasChangedSince;
	public static String VerdictIntake_theirSamplesLeave;
	public static String VerdictIntake_theNearestLabelledSampleIs;
	public static String VerdictIntake_theRowIsOfSplit;
	public static String VerdictIntake_theSampleHasChangedSince;
	public static String VerdictIntake_withRejectTheMapWrite;
	public static String VerdictIntake_writeApproveMovePoolFaulty;
	public static String VerdictIntake_writeItAs203105;
	public static String VerdictIntake_writeMoveAsTheDecision;
	public static String VerdictIntake_writeTheNumberOfA;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
