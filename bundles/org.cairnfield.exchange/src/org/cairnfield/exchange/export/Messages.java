package org.cairnfield.exchange.export;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Caution_accessPointsByPseudonymsA;
	public static String Caution_accessPointsByTheirAddresses;
	public static String Caution_addressesOfAccessPointsPlaces;
	public static String Caution_aMapAgesAccessPoints;
	public static String Caution_inThisExport;
	public static String Caution_locallyAdministeredAddressesToo;
	public static String Caution_namesOfDevices;
	public static String Caution_noLocallyAdministeredAddresses;
	public static String Caution_noNamesOfDevices;
	public static String Caution_noTimes;
	public static String Caution_positionsComputedFromThisMap;
	public static String Caution_samplesWithTheirPlacesAt;
	public static String Caution_timesAsRecorded;
	public static String Caution_timesToTheDay;
	public static String Caution_timesToTheHour;
	public static String Caution_timesToTheMonth;
	public static String Checksums_cannotBeJudged;
	public static String Checksums_isMissing;
	public static String Checksums_isMissingNothingTellsWhat;
	public static String Checksums_isNotAsItWas;
	public static String Checksums_isNotNamedIn;
	public static String ExportFolder_giveTheSiteAGeoreference;
	public static String ExportFolder_nameAnotherFolder;
	public static String ExportFolder_nothingWasExportedNoSite;
	public static String ExportFolder_theExportCouldNotBe;
	public static String MapExport_notInTheGeojsonSince;
	public static String MapExport_noWasWrittenNoSite;
	public static String MapExport_withoutGeometryInTheGeopackage;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
