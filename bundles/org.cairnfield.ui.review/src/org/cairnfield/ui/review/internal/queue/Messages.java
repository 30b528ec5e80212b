package org.cairnfield.ui.review.internal.queue;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String AuditPane_1ProposalWithAMark;
	public static String AuditPane_approveTheRest;
	public static String AuditPane_backToTheWholeQueue;
	public static String AuditPane_band;
	public static String AuditPane_besideThemLeftToLook;
	public static String AuditPane_drawAnotherSample;
	public static String AuditPane_failedBefore;
	public static String AuditPane_forASecondReviewer;
	public static String AuditPane_inThisBandOnlyLeft;
	public static String AuditPane_lookAtTheSampleDrawn;
	public static String AuditPane_lookedAtOfNotApproved;
	public static String AuditPane_nothingIsLeftToDecide;
	public static String AuditPane_proposalsWithAMarkAre;
	public static String AuditPane_theAuditHasFailedWhatever;
	public static String AuditPane_theRestMayBeApproved;
	public static String AuditPane_toApproveThisBandAt;
	public static String AuditPane_twoReviewersOnAgreeOn;
	public static String AuditPane_verdictsWait;
	public static String AuditPane_verdictWaits;
	public static String QueueColumn_byHowMuchRBeats;
	public static String QueueColumn_carrier;
	public static String QueueColumn_changeOfTheFloorS;
	public static String QueueColumn_clickToSort;
	public static String QueueColumn_clusterOfTheNearestLabelled;
	public static String QueueColumn_clusterThatIsProposed;
	public static String QueueColumn_distanceToTheClusterS;
	public static String QueueColumn_doubtInItsPlaceSo;
	public static String QueueColumn_doubtInItsReadingsSo;
	public static String QueueColumn_effect;
	public static String QueueColumn_floor;
	public static String QueueColumn_howManyOfThoseThat;
	public static String QueueColumn_howWellItCorrelatesWith;
	public static String QueueColumn_margin;
	public static String QueueColumn_nearest;
	public static String QueueColumn_noiseSample;
	public static String QueueColumn_onFloor;
	public static String QueueColumn_place;
	public static String QueueColumn_readings;
	public static String QueueColumn_sample;
	public static String QueueColumn_state;
	public static String QueueColumn_theLabelledSampleThatIt;
	public static String QueueColumn_warnings;
	public static String QueueColumn_whatToLookAtBefore;
	public static String QueueColumn_whatWasDecided;
	public static String QueuePane_computingTheEvidenceOnEach;
	public static String QueuePane_filterOfTheQueue;
	public static String QueuePane_filterSuchAsCluster7;
	public static String QueuePane_group;
	public static String QueuePane_noLineMatchesClearThe;
	public static String QueuePane_noProposalOfThisSplit;
	public static String QueuePane_openAnArchiveToReview;
	public static String QueuePane_proposalsOnWhichYouStill;
	public static String QueuePane_show;
	public static String QueuePane_sort;
	public static String QueuePane_split;
	public static String QueuePane_splitHasNoProposalsMake;
	public static String QueuePane_theMapHasChangedEvidence;
	public static String QueuePane_thereIsNoSplitYet;
	public static String QueueTable_noiseSamplesToReview;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
