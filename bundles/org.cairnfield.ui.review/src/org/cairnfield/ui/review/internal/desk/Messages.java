package org.cairnfield.ui.review.internal.desk;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String PlanCompanions_carrier;
	public static String PlanCompanions_nearestOfC;
	public static String ReviewDesk_evidenceForSplit;
	public static String ReviewDesk_theLastChangeIsNo;
	public static String ReviewNumber_confidence;
	public static String ReviewNumber_longestChoice;
	public static String ReviewNumber_noiseShare;
	public static String ReviewNumber_shareWrong;
	public static String ReviewNumber_smallestR;
	public static String VerdictExchange_comparingSplitsAnd;
	public static String VerdictExchange_reading;
	public static String VerdictExchange_writingTheVerdictsOfSplit;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
