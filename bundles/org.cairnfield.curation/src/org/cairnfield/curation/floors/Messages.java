package org.cairnfield.curation.floors;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String FloorChange_1Inside;
	public static String FloorChange_allInside;
	public static String FloorChange_asBefore;
	public static String FloorChange_asBefore2;
	public static String FloorChange_before;
	public static String FloorChange_floor;
	public static String FloorChange_new;
	public static String FloorChange_ofOutsideUpToM;
	public static String FloorChange_outlineOnly;
	public static String FloorChange_replaced;
	public static String FloorChange_staysAsItIs;
	public static String FloorNaming_floor;
	public static String FloorNotes_hasNoOutlineNeitherHere;
	public static String FloorNotes_isNotInTheFile;
	public static String FloorNotes_liesMFromTheSamples;
	public static String FloorNotes_ofSamplesLieOutsideOf;
	public static String FloorNotes_theSiteHasNoFloor;
	public static String FloorTaking_aPlanImageCouldNot;
	public static String FloorTaking_chooseTheSiteWhosePlans;
	public static String FloorTaking_drawItAnew;
	public static String FloorTaking_itsOriginAtTheSouth;
	public static String FloorTaking_levelCannotBeOnThis;
	public static String FloorTaking_levelItsOutlineEnclosesNothing;
	public static String FloorTaking_makeRoomOnTheDisk;
	public static String FloorTaking_sayWhereItLiesEdit;
	public static String FloorTaking_sayWhereTheSiteLies;
	public static String FloorTaking_siteHasNoPlaceOn;
	public static String FloorTaking_takeInFloorPlansOf;
	public static String FloorTaking_theMiddleOfItsSamples;
	public static String FloorTaking_theSiteCannotBePlaced;
	public static String FloorTaking_theSiteHasAPlace;
	public static String FloorTaking_theSiteIsPlacedAt;
	public static String LevelChoice_aHole;
	public static String LevelChoice_andTheOutlineGoesAround;
	public static String LevelChoice_consistsOfAreas;
	public static String LevelChoice_giveAnotherShift;
	public static String LevelChoice_giveThePlansOfThe;
	public static String LevelChoice_hasDrawnInThePlan;
	public static String LevelChoice_holes;
	public static String LevelChoice_isLeftOutItBelongs;
	public static String LevelChoice_itHasLevelsOfAnd;
	public static String LevelChoice_itsLevelsNameNoBuilding;
	public static String LevelChoice_level;
	public static String LevelChoice_levelsOfOrdinalBecomeOne;
	public static String LevelChoice_nameNoBuilding;
	public static String LevelChoice_noLevelOfItBelongs;
	public static String LevelChoice_sayWhichOfThemIs;
	public static String LevelChoice_shiftedByItsLevelsAre;
	public static String LevelChoice_theFileHasLevelsOf;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
