package org.cairnfield.exchange.floors;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String EarthSystem_exportThePlansInWgs;
	public static String EarthSystem_itsCoordinateSystemIsNot;
	public static String EarthSystem_oneWithoutAName;
	public static String EarthSystem_thePositionIsOutside180;
	public static String ImdfReader_giveAnArchiveOfA;
	public static String ImdfReader_giveAnImdfArchiveOgc;
	public static String ImdfReader_giveEachAnIdOf;
	public static String ImdfReader_giveEachFeatureOneAs;
	public static String ImdfReader_giveEachLevelItsPlace;
	public static String ImdfReader_imdf;
	public static String ImdfReader_isMissingTheArchiveIs;
	public static String ImdfReader_itHasNoId;
	public static String ImdfReader_itsFeatureTypeIsNot;
	public static String ImdfReader_itsLevelIdNamesNo;
	public static String ImdfReader_itsOrdinalIsNotA;
	public static String ImdfReader_namesVersionOfImdfThe;
	public static String ImdfReader_putFeaturesOfEachType;
	public static String ImdfReader_thereAreNoLevelsIn;
	public static String ImdfReader_thereAreTwoLevelsOf;
	public static String ImdfReader_thereIsNoInIt;
	public static String MapFeature_feature;
	public static String MapFeature_feature2;
	public static String MapFeature_giveOneAsRfc7946;
	public static String MapFeature_number;
	public static String MapFeature_numberOfTheFeaturesIs;
	public static String MapFeature_thisIsNoFeaturecollection;
	public static String MapFeature_writeTheFileAnew;
	public static String MapGeometry_aLineHasFewerThan;
	public static String MapGeometry_aPolygonHasNoRing;
	public static String MapGeometry_aPositionIsNotTwo;
	public static String MapGeometry_aRingHasCornersAnd;
	public static String MapGeometry_aRingIsOpenIt;
	public static String MapGeometry_drawAtLeastThreeCorners;
	public static String MapGeometry_drawItAsALine;
	public static String MapGeometry_drawItsArea;
	public static String MapGeometry_drawItsAreaOrLeave;
	public static String MapGeometry_geometryOfNoType;
	public static String MapGeometry_itHasNoGeometry;
	public static String MapGeometry_itsCoordinatesAreNotLists;
	public static String MapGeometry_itsGeometryHasNoPolygon;
	public static String MapGeometry_itsGeometryIsANot;
	public static String MapGeometry_itsGeometryIsANot2;
	public static String MapGeometry_repeatTheFirstPositionAt;
	public static String MapGeometry_writeItAsRfc7946;
	public static String MapSource_askForTheRightTo;
	public static String MapSource_checkTheDiskAndTry;
	public static String MapSource_checkTheName;
	public static String MapSource_doNotTrustThisArchive;
	public static String MapSource_fetchItAgainAndWithout;
	public static String MapSource_giveAFeaturecollectionAsRfc;
	public static String MapSource_giveAnImdfArchiveWhich;
	public static String MapSource_giveThePlansOfOne;
	public static String MapSource_itEndsTooEarly;
	public static String MapSource_itIsNestedTooDeeply;
	public static String MapSource_itIsNotInUtf;
	public static String MapSource_itMayNotBeRead;
	public static String MapSource_leaveOneOfThemIn;
	public static String MapSource_nameAnImdfArchiveIts;
	public static String MapSource_readingFailed;
	public static String MapSource_somethingFollowsItsEnd;
	public static String MapSource_somethingIsWrongAtLine;
	public static String MapSource_theArchiveHasAFile;
	public static String MapSource_theArchiveHasFilesMore;
	public static String MapSource_theArchiveIsDamagedOr;
	public static String MapSource_thereAreTwoFilesCalled;
	public static String MapSource_thereIsMoreTextThan;
	public static String MapSource_thereIsNoSuchFile;
	public static String MapSource_thisIsNeitherAFile;
	public static String MapSource_thisIsNoGeojsonIt;
	public static String MapSource_thisIsNoJsonThat;
	public static String MapSource_writeTheFileAnewIt;
	public static String PlainReader_giveEachAPropertyLevel;
	public static String PlainReader_noneOfItsFeaturesIs;
	public static String PlainReader_noneOfItsPropertiesIs;
	public static String PlainReader_ofOrdinal;
	public static String PlainReader_pointsAreLeftOutPlans;
	public static String RingCheck_drawItAnew;
	public static String RingCheck_drawItsCornersInOrder;
	public static String RingCheck_itsOutlineCrossesItselfThe;
	public static String RingCheck_itsOutlineEnclosesNothing;
	public static String RingCheck_itsOutlineHasCornersMore;
	public static String RingCheck_simplifyTheOutline;
	public static String ShapeCollector_isLeftOut;
	public static String ShapeCollector_moreFeaturesAreLeftOut;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
