package org.cairnfield.curation.internal.rules.evidence;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String DeviceDifferences_accessPointsThatBothHeard;
	public static String DeviceDifferences_aMiddleOfOneIs;
	public static String DeviceDifferences_meanLevelFromWhichDevices;
	public static String DeviceDifferences_wellAboveWhatIsCut;
	public static String Epochs_daysWithoutASurveyWithin;
	public static String Epochs_threeWeeks;
	public static String PlacePairs_enoughToFindAnotherSurvey;
	public static String PlacePairs_spotsAroundAPlaceThat;
	public static String SignalNeighbours_aboutTheDistanceBetweenPlaces;
	public static String SignalNeighbours_aMiddleOfFewerMoves;
	public static String SignalNeighbours_placesFromWhichDevicesAre;
	public static String SignalNeighbours_takenForTheSamePlace;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
