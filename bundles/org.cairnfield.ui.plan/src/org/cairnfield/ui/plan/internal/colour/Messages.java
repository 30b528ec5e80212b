package org.cairnfield.ui.plan.internal.colour;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ByCluster_cluster;
	public static String ByCluster_clusterOf;
	public static String ByCluster_clusterThereIsNoSplit;
	public static String ByCluster_inNoSplit;
	public static String ByCluster_proposedForCNotOn;
	public static String ByCluster_proposedForOthers;
	public static String ByDevice_device;
	public static String ByDevice_deviceNotKnown;
	public static String ByHealth_findings;
	public static String ByHealth_findingsChecking;
	public static String ByHealth_findingsNotCheckedYet;
	public static String ByHealth_nothingFound;
	public static String ByHealth_worstOpenFinding;
	public static String ByNumberHeard_accessPoints;
	public static String ByNumberHeard_numberHeard;
	public static String ByRssi_chooseAnAccessPointIn;
	public static String ByRssi_notHeard;
	public static String ByRssi_rssiOf;
	public static String ByRssi_rssiOfTheAccessPoint;
	public static String ByState_setAside;
	public static String ByState_state;
	public static String BySurvey_survey;
	public static String Categories_others;
	public static String Colourings_colouringOf;
	public static String ErrorColours_atAnotherSiteNoArrow;
	public static String ErrorColours_meanErrorInSquaresOf;
	public static String ErrorColours_mOrMore;
	public static String ErrorColours_noPosition;
	public static String ErrorColours_onAnotherFloorDashedArrow;
	public static String ErrorColours_putOnTheRightFloor;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
