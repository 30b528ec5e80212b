package org.cairnfield.model.check;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AccessPointCheck_accessPoint;
	public static String AccessPointCheck_accessPointHasNoAddress;
	public static String AccessPointCheck_accessPointWasLastHeard;
	public static String AccessPointCheck_channelOfAccessPointDoes;
	public static String AccessPointCheck_inTheBand;
	public static String AccessPointCheck_theAddressOfAccessPoint;
	public static String AccessPointCheck_thePlaceOfAccessPoint;
	public static String ArchiveCheck_accessPoint;
	public static String ArchiveCheck_accessPointsAndBothHave;
	public static String ArchiveCheck_theIdOfIsTaken;
	public static String DeviceCheck_device;
	public static String DeviceCheck_theCorrectionOfOfEach;
	public static String DeviceCheck_theRssiOffsetOfDb;
	public static String FloorCheck_floor;
	public static String FloorCheck_isOutside3276832767Give;
	public static String FloorCheck_theHeightOfMIs;
	public static String FloorCheck_theOutlineOfCrossesOr;
	public static String FloorCheck_theOutlineOfEnclosesNo;
	public static String FloorCheck_theOutlineOfHasCorners;
	public static String FloorCheck_thePlanImageOfIs;
	public static String LedgerCheck_aLedger;
	public static String LedgerCheck_verdictSupersedesWhichIsNot;
	public static String Report_hasGiveItOneOf;
	public static String Report_noId;
	public static String Report_theId;
	public static String SiblingNames_floor;
	public static String SiblingNames_hasTheNameAlready;
	public static String SiblingNames_ofSite;
	public static String SiblingNames_sHaveTheSameName;
	public static String SiblingNames_siteHasNoNameAnd;
	public static String SiteCheck_hasTwoFloorsOfLevel;
	public static String SiteCheck_site;
	public static String SplitCheck_andVariance;
	public static String SplitCheck_aSplit;
	public static String SplitCheck_proposalsOfSplitCannotHave;
	public static String SplitCheck_splitCannotHaveBeenMade;
	public static String SurveyCheck_ofSurveySamplesAreOn;
	public static String SurveyCheck_ofSurveySamplesHeardAccess;
	public static String SurveyCheck_survey;
	public static String SurveyCheck_theSourceDigestOfSurvey;
	public static String SurveyCheck_theSurveyorOfSurveyIs;
	public static String VerdictCheck_verdictMovesSampleAndNames;
	public static String VerdictCheck_verdictOnSampleLacksIts;
	public static String VerdictCheck_verdictTakesSampleOutOf;
	public static String WaiverCheck_aWaiverOfRuleLacks;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
