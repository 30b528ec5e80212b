package org.cairnfield.ui.charts;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String BarChart_places;
	public static String DotChart_dotsOver;
	public static String GridMap_noValue;
	public static String GridMap_overAndByCells;
	public static String HeatTable_ofRowsOverColumns;
	public static String Histogram_overFromTo;
	public static String Histogram_to;
	public static String Legend_to;
	public static String LineChart_over;
	public static String PairedBars_accessPoint;
	public static String PairedBars_accessPoints;
	public static String PairedBars_heardByMoreThanOne;
	public static String PairedBars_notHeard;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
