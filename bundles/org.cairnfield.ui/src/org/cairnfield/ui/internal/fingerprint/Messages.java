package org.cairnfield.ui.internal.fingerprint;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String AccessPointView_24Ghz;
	public static String AccessPointView_5Ghz;
	public static String AccessPointView_6Ghz;
	public static String AccessPointView_aboutTheAccessPoint;
	public static String AccessPointView_backIntoTheMap;
	public static String AccessPointView_channel;
	public static String AccessPointView_chooseAnAccessPointIn;
	public static String AccessPointView_countsAsInTheMap;
	public static String AccessPointView_floor;
	public static String AccessPointView_heardBy;
	public static String AccessPointView_levelsOfTheAccessPoint;
	public static String AccessPointView_lookingWhereIsHeard;
	public static String AccessPointView_medianDbm;
	public static String AccessPointView_mountedAt;
	public static String AccessPointView_noLevelToShow;
	public static String AccessPointView_of;
	public static String AccessPointView_oneRadioWith;
	public static String AccessPointView_setAside;
	public static String AccessPointView_setAside2;
	public static String AccessPointView_strongestDbm;
	public static String AccessPointView_survey;
	public static String AccessPointView_whereItIsHeard;
	public static String AccessPointView_whyItShouldNotBe;
	public static String FingerprintView_aboutTheSample;
	public static String FingerprintView_andMore;
	public static String FingerprintView_fingerprint;
	public static String FingerprintView_floorXMYM;
	public static String FingerprintView_selectOneSampleToSee;
	public static String FingerprintView_setAside;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
