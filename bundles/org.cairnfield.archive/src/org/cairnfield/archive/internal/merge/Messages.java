package org.cairnfield.archive.internal.merge;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String ArchiveMerge_splitWasComputedOnBoth;
	public static String Inverse_asAWhole;
	public static String Inverse_in;
	public static String Inverse_inTheSameLines;
	public static String Inverse_restoreAWholeStateIn;
	public static String Inverse_takeBackTheLaterChange;
	public static String Inverse_theChangeCanNotBe;
	public static String Inverse_theChangeCanNotBe2;
	public static String Renaming_othersHaveKeptAnotherSplit;
	public static String Renaming_othersHaveTakenInAnother;
	public static String Renaming_surveyIsOneThatOthers;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
