package org.cairnfield.ui.review.internal.verdict;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String VerdictPane_approve;
	public static String VerdictPane_approveA;
	public static String VerdictPane_asTheEvidenceSays;
	public static String VerdictPane_backB;
	public static String VerdictPane_clusterToMoveTo;
	public static String VerdictPane_defer;
	public static String VerdictPane_deferD;
	public static String VerdictPane_deleteTakesBackYourVerdict;
	public static String VerdictPane_faulty;
	public static String VerdictPane_faultyF;
	public static String VerdictPane_inYourOwnWords;
	public static String VerdictPane_inYourOwnWordsIf;
	public static String VerdictPane_move;
	public static String VerdictPane_moveM;
	public static String VerdictPane_moveTo;
	public static String VerdictPane_nextN;
	public static String VerdictPane_nothingToUndo;
	public static String VerdictPane_numberOfAClusterSuch;
	public static String VerdictPane_pool;
	public static String VerdictPane_poolP;
	public static String VerdictPane_reason;
	public static String VerdictPane_reasonT;
	public static String VerdictPane_reviewingAsOneKeyDecides;
	public static String VerdictPane_somebodyDecidesLaterARelease;
	public static String VerdictPane_theLineBefore;
	public static String VerdictPane_theNextSampleThatIs;
	public static String VerdictPane_theSampleGoesToThe;
	public static String VerdictPane_theSampleJoinsAnotherCluster;
	public static String VerdictPane_theSampleJoinsTheCluster;
	public static String VerdictPane_theSampleLeavesTheMap;
	public static String VerdictPane_undoesTheLastChangeIf;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
