package org.cairnfield.ui.plan.internal.surface;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String SurfaceKind_rssiOfTheAccessPoint;
	public static String SurfaceKind_sampleDensity;
	public static String SurfaceQuestion_meanErrorAtAPlace;
	public static String SurfaceQuestion_orMore;
	public static String SurfaceQuestion_rssiOfBy1D;
	public static String SurfaceQuestion_rssiOfNoPlaceOf;
	public static String SurfaceQuestion_sampleDensitySamplesOfThe;
	public static String SurfaceQuestion_samplesOn100M;
	public static String SurfaceQuestion_surfaceRssiOf;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
