package org.cairnfield.ui.plan.internal.scene;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String Elsewhere_floorWhichTheSiteDoes;
	public static String Elsewhere_inAnotherBuilding;
	public static String Elsewhere_is;
	public static String Elsewhere_onAnotherFloor;
	public static String Elsewhere_the;
	public static String Elsewhere_theSampleUnderReview;
	public static String PlanScene_ofThemForTests;
	public static String PlanScene_samples;
	public static String PlanScene_selected;
	public static String PlanScene_testSamplesArrowsLeadFrom;
	public static String PlanScene_underReview;
	public static String SampleText_accessPointsHeard;
	public static String SampleText_setAside;
	public static String SampleText_setAside2;
	public static String SampleText_xYHeard;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
