package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String Furniture_noArchiveIsOpenOpen;
	public static String Furniture_noSurveyHasSamplesOn;
	public static String Furniture_noTestSampleWasTaken;
	public static String Furniture_thisArchiveHasNoFloors;
	public static String MountEditor_clickWhereIsMountedOr;
	public static String MoveSamplePolicy_xYMoved;
	public static String OutlineEditor_dismiss;
	public static String OutlineEditor_outline;
	public static String OutlineEditor_theOutlineThatWasDrawn;
	public static String PlanPointer_aboutXYEstimatedFrom;
	public static String PlanPointer_fromWhereItIsMounted;
	public static String PlanPointer_mountedAtXY;
	public static String SessionCommands_moveSamples;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
