package org.cairnfield.ui.review.internal.prefs;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ReviewPage_aNoiseSampleThatCorrelates;
	public static String ReviewPage_automaticChoice;
	public static String ReviewPage_forSamplesWithRFrom;
	public static String ReviewPage_howSplitsAreChosenAnd;
	public static String ReviewPage_madeFromANoiseShare;
	public static String ReviewPage_proposals;
	public static String ReviewPage_takesAtMost;
	public static String ReviewPage_thePreferencesCouldNotBe;
	public static String ReviewPage_whatHasNotBeenTried;
	public static String ReviewPage_withLessNoiseInA;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
