package org.cairnfield.ui.review.internal.exchange;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String CarryOverDialog_aVerdictGoesOverWhere;
	public static String CarryOverDialog_carryOver;
	public static String CarryOverDialog_carryVerdictsOver;
	public static String CarryOverDialog_carryVerdictsOverToSplit;
	public static String CarryOverDialog_comparingTheTwoSplits;
	public static String CarryOverDialog_copyTheList;
	public static String CarryOverDialog_fromSplit;
	public static String CarryOverDialog_noneStaysBehind;
	public static String CarryOverDialog_noOtherSplitOfThis;
	public static String CarryOverDialog_notShownToYou;
	public static String CarryOverDialog_noVerdictGoesOver;
	public static String CarryOverDialog_sample;
	public static String CarryOverDialog_thoseOnStayBehindFor;
	public static String CarryOverDialog_verdict;
	public static String CarryOverDialog_verdictsOn;
	public static String CarryOverDialog_verdictsOnGoOver;
	public static String CarryOverDialog_verdictsThatStayBehind;
	public static String CarryOverDialog_whyItStaysBehind;
	public static String ExchangeHandler_export;
	public static String ExchangeHandler_exportVerdictsOfSplit;
	public static String ExchangeHandler_importVerdictsOnSplit;
	public static String ExchangeHandler_nothingCanBeTakenIn;
	public static String ExchangeHandler_thereIsNoSplitUnder;
	public static String OfferBar_carryOver;
	public static String OfferBar_splitHasVerdictsOnThis;
	public static String TableProblemsDialog_importVerdicts;
	public static String TableProblemsDialog_line;
	public static String TableProblemsDialog_nothingWasTakenIn;
	public static String TableProblemsDialog_rowIs;
	public static String TableProblemsDialog_rowsAre;
	public static String TableProblemsDialog_whatIsWrong;
	public static String TableProblemsDialog_whatToDo;
	public static String TableProblemsDialog_wrongInMendTheTable;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
