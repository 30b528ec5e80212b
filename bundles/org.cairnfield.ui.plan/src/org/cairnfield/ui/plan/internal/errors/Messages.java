package org.cairnfield.ui.plan.internal.errors;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String FloorErrors_allFloors;
	public static String FloorErrors_mean95RightFloor;
	public static String FloorErrors_noPosition;
	public static String FloorErrors_noTestSampleHere;
	public static String FloorErrors_off;
	public static String FloorErrors_putOn;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
