package org.cairnfield.ui.review.internal.measure;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String MeasurePane_95OfMean;
	public static String MeasurePane_95OfRatio;
	public static String MeasurePane_95Within;
	public static String MeasurePane_cancel;
	public static String MeasurePane_comparedPerQuery;
	public static String MeasurePane_how;
	public static String MeasurePane_keepASplitToMeasure;
	public static String MeasurePane_matchesTheSamplesOfThe;
	public static String MeasurePane_matching;
	public static String MeasurePane_matchingTheTestSamples;
	public static String MeasurePane_meanError;
	public static String MeasurePane_measure;
	public static String MeasurePane_measure2;
	public static String MeasurePane_measuresOfTheSplit;
	public static String MeasurePane_measuringSplit;
	public static String MeasurePane_median;
	public static String MeasurePane_splitMapSamplesTestSamples;
	public static String MeasurePane_thereIsNoTestSurvey;
	public static String MeasurePane_to;
	public static String MeasurePane_toPlain;
	public static String MeasurePane_verdictsOrMapHaveChanged;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
