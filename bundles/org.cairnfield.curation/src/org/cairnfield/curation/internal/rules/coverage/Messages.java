package org.cairnfield.curation.internal.rules.coverage;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String CoverageGapRule_1And4FindAll;
	public static String CoverageGapRule_3FindsTheSame12;
	public static String CoverageGapRule_6FindsTheSame24;
	public static String CoverageGapRule_aboutMBetweenTheSamples;
	public static String CoverageGapRule_aboutMOfAroundLie;
	public static String CoverageGapRule_aSampleShouldBeWithin;
	public static String CoverageGapRule_isTooLargeForCells;
	public static String CoverageGapRule_partsOfAFloorWithout;
	public static String CoverageGapRule_samplesOfLieOnOne;
	public static String CoverageGapRule_sideOfACell;
	public static String CoverageGapRule_smallestGapThatIsReported;
	public static String CoverageGapRule_whereNobodyMeasuredADevice;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
