package org.cairnfield.model.edit;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AddWaiversCommand_waive;
	public static String CalibrateDeviceCommand_calibrateByDb;
	public static String CalibrateDeviceCommand_takeTheCalibrationOff;
	public static String CorrectDeviceCommand_correctLevels;
	public static String CorrectDeviceCommand_correctTheLevelsOfOf;
	public static String CorrectDeviceCommand_takeTheLevelsOfAs;
	public static String CountAccessPointsAsCommand_accessPoint;
	public static String CountAccessPointsAsCommand_countAs;
	public static String CountAccessPointsAsCommand_countOnTheirOwn;
	public static String GroupAccessPointsCommand_accessPoint;
	public static String GroupAccessPointsCommand_groupAsRadio;
	public static String GroupAccessPointsCommand_ungroup;
	public static String LocateSiteCommand_forgetWhereOnEarth;
	public static String LocateSiteCommand_lies;
	public static String LocateSiteCommand_sayWhereOnEarth;
	public static String ModelText_archive;
	public static String ModelText_by;
	public static String ModelText_cluster;
	public static String ModelText_floor;
	public static String ModelText_forCluster;
	public static String ModelText_ledger;
	public static String ModelText_samples;
	public static String ModelText_setAside;
	public static String ModelText_split;
	public static String ModelText_to;
	public static String ModelText_toCluster;
	public static String ModelText_waiver;
	public static String MoveSampleCommand_moveSampleToMM;
	public static String RemoveReadingsCommand_removeReadingsOf;
	public static String SetAccessPointStateCommand_accessPoint;
	public static String SetAccessPointStateCommand_keep;
	public static String SetAccessPointStateCommand_setAside;
	public static String SetFloorCommand_putOnFloor;
	public static String SetMapPeriodCommand_allSurveys;
	public static String SetMapPeriodCommand_from;
	public static String SetMapPeriodCommand_makeTheMapOfOf;
	public static String SetMapPeriodCommand_setTheDaysOfThe;
	public static String SetMapPeriodCommand_until;
	public static String SetSampleStateCommand_keep;
	public static String SetSampleStateCommand_setAside;
	public static String SiteOrder_down;
	public static String SiteOrder_move;
	public static String SiteOrder_up;
	public static String SwapAxesCommand_swapXAndYOf;
	public static String WithdrawWaiversCommand_withdraw;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
