package org.cairnfield.ui.internal.properties.model;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String FindingProperties_about;
	public static String FindingProperties_andMore;
	public static String FindingProperties_comparedWith;
	public static String FindingProperties_message;
	public static String FindingProperties_remedy;
	public static String FindingProperties_rightHere;
	public static String FindingProperties_rule;
	public static String FindingProperties_severity;
	public static String FindingProperties_shareOfWhatTheRule;
	public static String FindingProperties_whatElseToLookAt;
	public static String FindingProperties_whatTheFindingIsAbout;
	public static String ObjectProperties_accessPoints;
	public static String ObjectProperties_clusters;
	public static String ObjectProperties_devices;
	public static String ObjectProperties_firstSampleUtc;
	public static String ObjectProperties_floors;
	public static String ObjectProperties_floorsLevels;
	public static String ObjectProperties_formatVersion;
	public static String ObjectProperties_gateShareOfNoise;
	public static String ObjectProperties_heardPerSample;
	public static String ObjectProperties_lastSampleUtc;
	public static String ObjectProperties_noiseSamples;
	public static String ObjectProperties_outline;
	public static String ObjectProperties_placeOnEarth;
	public static String ObjectProperties_proposals;
	public static String ObjectProperties_readings;
	public static String ObjectProperties_samples;
	public static String ObjectProperties_samplesSetAside;
	public static String ObjectProperties_samplesThatHeardIt;
	public static String ObjectProperties_site;
	public static String ObjectProperties_sites;
	public static String ObjectProperties_splits;
	public static String ObjectProperties_strongestLevelDbm;
	public static String ObjectProperties_surveys;
	public static String ObjectProperties_theBuildingThatTheFloor;
	public static String ObjectProperties_to;
	public static String ObjectProperties_weakestLevelDbm;
	public static String PropertyValues_1PixelIsCmTurned;
	public static String PropertyValues_floor;
	public static String PropertyValues_ghz;
	public static String PropertyValues_theWholeArchive;
	public static String PropertyValues_turnedBy;
	public static String SampleProperties_accessPointsHeard;
	public static String SampleProperties_andMore;
	public static String SampleProperties_dbm;
	public static String SampleProperties_device;
	public static String SampleProperties_firstSampleUtc;
	public static String SampleProperties_floorLevel;
	public static String SampleProperties_floorsLevels;
	public static String SampleProperties_heardPerSample;
	public static String SampleProperties_kind;
	public static String SampleProperties_lastSampleUtc;
	public static String SampleProperties_partOfTheMap;
	public static String SampleProperties_readings;
	public static String SampleProperties_sample;
	public static String SampleProperties_samplesSelected;
	public static String SampleProperties_samplesSetAside;
	public static String SampleProperties_setAside;
	public static String SampleProperties_site;
	public static String SampleProperties_sites;
	public static String SampleProperties_state;
	public static String SampleProperties_strongestLevel;
	public static String SampleProperties_survey;
	public static String SampleProperties_surveyorInitials;
	public static String SampleProperties_surveys;
	public static String SampleProperties_timeUtc;
	public static String SampleProperties_to;
	public static String SampleProperties_weakestLevel;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
