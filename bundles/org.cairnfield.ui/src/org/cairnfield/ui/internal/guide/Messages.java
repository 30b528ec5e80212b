package org.cairnfield.ui.internal.guide;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String UserGuide_guide;
	public static String UserGuide_noBrowserWasFoundOn;
	public static String UserGuide_theGuideCouldNotBe;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
