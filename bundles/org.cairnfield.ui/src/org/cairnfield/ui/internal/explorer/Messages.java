package org.cairnfield.ui.internal.explorer;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ExplorerView_archive;
	public static String ExplorerView_filter;
	public static String Group_accessPoints;
	public static String Group_devices;
	public static String Group_splits;
	public static String Group_surveys;
	public static String LocateSiteHandler_latitudeAndLongitudeOfThe;
	public static String LocateSiteHandler_placeOnEarth;
	public static String LocateSiteHandler_placeOnEarthOf;
	public static String LocateSiteHandler_selectASiteInThe;
	public static String LocateSiteHandler_threeNumbersAreWantedSuch;
	public static String MoveSiteHandler_orderOfSites;
	public static String MoveSiteHandler_selectASiteInThe;
	public static String Strays_onNoFloorOfThe;
	public static String TreeLabels_db;
	public static String TreeLabels_notInTheMap;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
