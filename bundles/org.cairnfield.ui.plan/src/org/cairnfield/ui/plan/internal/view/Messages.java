package org.cairnfield.ui.plan.internal.view;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ErrorBar_cancel;
	public static String ErrorBar_close;
	public static String ErrorBar_errorMap;
	public static String ErrorBar_measure;
	public static String ErrorBar_measureToSeeTheErrors;
	public static String ErrorBar_nextToIt;
	public static String ErrorBar_showTheMapAgain;
	public static String ErrorBar_theArchiveHasChangedSince;
	public static String ErrorBar_way;
	public static String ErrorWork_matchingTheTestSamples;
	public static String ErrorWork_measuringTheErrorMap;
	public static String ErrorWork_measuringWasCancelled;
	public static String ErrorWork_thereIsNoTestSurvey;
	public static String FloorBackdrop_estimatingWhereAccessPointsAre;
	public static String FloorBackdrop_placesOfAccessPoints;
	public static String FloorBackdrop_readingThePlanImage;
	public static String FloorBackdrop_thePlanImageCannotBe;
	public static String LegendStrip_accessPointEstimated;
	public static String LegendStrip_accessPointKnownPlace;
	public static String LegendStrip_from;
	public static String LegendStrip_legendOfThePlan;
	public static String LegendStrip_nothingIsColoured;
	public static String LegendStrip_setAside;
	public static String LegendStrip_shapesWithABarTest;
	public static String LegendStrip_squaresWithACrossAccess;
	public static String LegendStrip_testSample;
	public static String LegendStrip_to;
	public static String MountCommands_chooseAnAccessPointFirst;
	public static String MountCommands_nobodyHasSaidWhereIs;
	public static String MountCommands_placeOfAnAccessPoint;
	public static String OutlineBar_aMarginIs0To;
	public static String OutlineBar_aNumberOfMetresIs;
	public static String OutlineBar_clickTheNextCornerWith;
	public static String OutlineBar_clickTheNextCornerWith2;
	public static String OutlineBar_clickWhereTheFirstCorner;
	public static String OutlineBar_dragACornerOrThe;
	public static String OutlineBar_drawItAroundTheSamples;
	public static String OutlineBar_fromTheSamples;
	public static String OutlineBar_giveUp;
	public static String OutlineBar_keep;
	public static String OutlineBar_leaveTheOutlineAsIt;
	public static String OutlineBar_makeItTheOutlineOf;
	public static String OutlineBar_outlineFromTheSamples;
	public static String OutlineBar_theFloorHasNoSamples;
	public static String OutlineBar_theOutlineGoesRoundAll;
	public static String OutlineUndo_redoStepOfTheOutline;
	public static String OutlineUndo_undoStepOfTheOutline;
	public static String PlanBoard_floorPlan;
	public static String PlanBoard_floorPlanOfTheOther;
	public static String PlanPane_accessPoints;
	public static String PlanPane_colourBy;
	public static String PlanPane_errorMapTestSurvey;
	public static String PlanPane_floor;
	public static String PlanPane_showWhereAccessPointsSeem;
	public static String PlanPrint_floorPlan;
	public static String PlanPrint_notForSafetyOfLife;
	public static String PlanPrint_printThePlan;
	public static String PlanPrint_saveAPictureOfThe;
	public static String PlanPrint_thePictureWasNotSaved;
	public static String PlanPrint_thePrinterCannotBeUsed;
	public static String SurfaceChoice_chooseAnAccessPointIn;
	public static String SurfaceChoice_showBelowTheSamplesHow;
	public static String SurfaceChoice_surface;
	public static String SurfaceChoice_surfaceOfTheFloor;
	public static String SurfaceChoice_workingOutTheSurface;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
