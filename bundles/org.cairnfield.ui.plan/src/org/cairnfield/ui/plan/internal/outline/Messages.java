package org.cairnfield.ui.plan.internal.outline;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String OutlineShape_1Corner;
	public static String OutlineShape_corners;
	public static String OutlineShape_cornerXY;
	public static String OutlineShape_round;
	public static String OutlineShape_soFar;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
