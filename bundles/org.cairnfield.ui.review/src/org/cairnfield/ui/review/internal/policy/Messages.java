package org.cairnfield.ui.review.internal.policy;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String PolicyDialog_aSecondReviewerWhoDoes;
	public static String PolicyDialog_auditBeforeABandIs;
	public static String PolicyDialog_bandsOfStrength;
	public static String PolicyDialog_bandsWeakestFirst;
	public static String PolicyDialog_howProposalsAreReviewed;
	public static String PolicyDialog_namesEachWithItsLowest;
	public static String PolicyDialog_reviewPolicy;
	public static String PolicyDialog_setThePolicy;
	public static String PolicyDialog_stopABandWithMore;
	public static String PolicyDialog_strengthSaysWhereASample;
	public static String PolicyDialog_theArchiveKeepsItGates;
	public static String PolicyDialog_theHigherTheMoreSamples;
	public static String PolicyDialog_theSmallerTheMoreSamples;
	public static String PolicyDialog_withAConfidenceOf;
	public static String PolicyHandler_noArchiveIsOpen;
	public static String PolicyHandler_theReviewPolicyCannotBe;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
