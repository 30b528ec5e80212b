package org.cairnfield.curation.review;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Choice_markedAsFaulty;
	public static String Choice_movedToCluster;
	public static String Choice_sentToThePool;
	public static String QueueFilter_andOrNotPutTogether;
	public static String QueueFilter_aReviewer;
	public static String QueueFilter_c7AWordLooksInto;
	public static String QueueFilter_compare;
	public static String QueueFilter_stateNoneNobodyHasDecided;
	public static String QueueFilter_theQueue;
	public static String QueueFilter_tideHouse;
	public static String QueueFilter_warningFarHasThisIn;
	public static String QueueGrouping_band;
	public static String QueueGrouping_belowAllBands;
	public static String QueueGrouping_cluster;
	public static String QueueGrouping_markedLookCloser;
	public static String QueueGrouping_noMark;
	public static String QueueGrouping_unplacedNoProposal;
	public static String QueueRow_assignedTo;
	public static String QueueRow_carrier;
	public static String QueueRow_differ;
	public static String QueueRow_floor;
	public static String QueueRow_none;
	public static String QueueShown_assignedToMe;
	public static String QueueShown_leftToDecide;
	public static String QueueShown_staleVerdicts;
	public static String ReviewedArchive_noArchiveIsOpen;
	public static String ReviewQueue_ofLeft;
	public static String ReviewSession_bandHasNothingLeftTo;
	public static String ReviewSession_isToBeDecidedAgain;
	public static String ReviewSession_nothingCanBeDecided;
	public static String ReviewSession_nothingToChangeAbout;
	public static String ReviewSession_proposalsOfBandApprovedAfter;
	public static String ReviewSession_takeUpASampleOf;
	public static String ReviewSession_theVerdictOnIsTaken;
	public static String ReviewSession_undone;
	public static String StandingWords_2ndReview;
	public static String StandingWords_approved;
	public static String StandingWords_deferred;
	public static String StandingWords_disagreement;
	public static String StandingWords_needs2nd;
	public static String StandingWords_needs2nd2;
	public static String StandingWords_needs2nd3;
	public static String StandingWords_needs2nd4;
	public static String StandingWords_outOfMap;
	public static String StandingWords_pool;
	public static String StandingWords_setAside;
	public static String StandingWords_stale;
	public static String VerdictRules_isNoNumberOfA;
	public static String VerdictRules_itIsNotKnownWhich;
	public static String VerdictRules_theEvidenceOnWarnsChoose;
	public static String VerdictRules_theNearestLabelledSampleIs;
	public static String VerdictRules_youGaveTheFirstVerdict;
	public static String VerdictTransfer_carriedOverFrom;
	public static String VerdictTransfer_knownAlreadyWithoutADecision;
	public static String VerdictTransfer_noNewVerdictInThe;
	public static String VerdictTransfer_nothingWasTakenInFrom;
	public static String VerdictTransfer_noVerdictOfSplitCan;
	public static String VerdictTransfer_ofSplitWrittenToFill;
	public static String VerdictTransfer_oneUndoTakesThemBack;
	public static String VerdictTransfer_rowIs;
	public static String VerdictTransfer_rowsAre;
	public static String VerdictTransfer_takenInOneUndoTakes;
	public static String VerdictTransfer_theArchiveHasChangedMeanwhile;
	public static String VerdictTransfer_theArchiveHasChangedWhile;
	public static String VerdictTransfer_thoseOfStayBehind;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
