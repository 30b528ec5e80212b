package org.cairnfield.ui.internal.samples.model;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String CellText_setAside;
	public static String Placing_floor;
	public static String Placing_hasNoFloor;
	public static String Placing_isNoFloorWriteIts;
	public static String Placing_isNoLengthWriteMetres;
	public static String Placing_itHasNoFloorsAt;
	public static String Placing_itsFloorsAre;
	public static String Placing_level;
	public static String Placing_moveSampleAndPutIt;
	public static String SampleColumn_strongestDbm;
	public static String SampleColumn_timeUtc;
	public static String SampleExport_readingsDbm;
	public static String SampleExport_setAside;
	public static String SampleExport_timeUtc;
	public static String SampleExport_writing;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
