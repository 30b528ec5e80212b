package org.cairnfield.ui.internal.floors;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String FloorsDialog_addToItsLevelNumbers;
	public static String FloorsDialog_allFiles;
	public static String FloorsDialog_allOfItIsSo;
	public static String FloorsDialog_buildingOfTheFile;
	public static String FloorsDialog_change;
	public static String FloorsDialog_chooseAnImdfArchiveOr2;
	public static String FloorsDialog_chooseAnImdfArchiveOr;
	public static String FloorsDialog_chooseTheFolderOfAn;
	public static String FloorsDialog_file;
	public static String FloorsDialog_fileOrFolder;
	public static String FloorsDialog_floor;
	public static String FloorsDialog_folder;
	public static String FloorsDialog_imdfArchivesAndGeojson;
	public static String FloorsDialog_letTheFileSayWhere;
	public static String FloorsDialog_notes;
	public static String FloorsDialog_nothingCanBeChanged;
	public static String FloorsDialog_of;
	public static String FloorsDialog_outline;
	public static String FloorsDialog_planImage;
	public static String FloorsDialog_reading;
	public static String FloorsDialog_samples;
	public static String FloorsDialog_site;
	public static String FloorsDialog_takeIn;
	public static String FloorsDialog_takeInFloorPlans;
	public static String FloorsDialog_takeInOutlinesAndPlan;
	public static String FloorsDialog_takingThemInIsOne;
	public static String FloorsDialog_theOneOfTheSitesName;
	public static String FloorsDialog_writingThePlanImages;
	public static String FloorsPreview_cannotBeAFile;
	public static String FloorsPreview_comparingFloorPlans;
	public static String FloorsPreview_readingFloorPlans;
	public static String TakeFloorsHandler_floorsBelongToASite;
	public static String TakeFloorsHandler_takeInFloorPlans;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
