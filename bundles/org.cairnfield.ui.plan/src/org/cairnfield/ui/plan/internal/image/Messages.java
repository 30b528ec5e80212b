package org.cairnfield.ui.plan.internal.image;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ControlPoints_1PixelIsTurnedBy;
	public static String ControlPoints_clickAtLeastTwoPoints;
	public static String ControlPoints_giveXAndYIn;
	public static String ControlPoints_noPlacementYet;
	public static String ControlPoints_thePointsAreOffBy;
	public static String ControlPoints_twoPointsAlwaysFitA;
	public static String ImageBoard_chooseAnImageFileOf;
	public static String ImageBoard_noPointIsMarked;
	public static String ImageBoard_planImage;
	public static String ImageBoard_pointAtColumnRow;
	public static String ImagePlacing_copyingThePlanImage;
	public static String PictureFile_noImageThatCanBe;
	public static String PlaceImageDialog_allFiles;
	public static String PlaceImageDialog_chooseAnImageFile;
	public static String PlaceImageDialog_chooseAnImageOf;
	public static String PlaceImageDialog_images;
	public static String PlaceImageDialog_noImageThatCanBe;
	public static String PlaceImageDialog_nothingCanBeChanged;
	public static String PlaceImageDialog_offByM;
	public static String PlaceImageDialog_pixel;
	public static String PlaceImageDialog_place;
	public static String PlaceImageDialog_placeAPlanImage;
	public static String PlaceImageDialog_placeAPlanImageOn;
	public static String PlaceImageDialog_point;
	public static String PlaceImageDialog_pointsOfTheImageAnd;
	public static String PlaceImageDialog_removeThePoint;
	public static String PlaceImageDialog_theFloorHasNoPlan;
	public static String PlaceImageDialog_theImageItHas;
	public static String PlaceImageDialog_theImageItHasCannot;
	public static String PlanImageCommand_placeAPlanImageOn;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
