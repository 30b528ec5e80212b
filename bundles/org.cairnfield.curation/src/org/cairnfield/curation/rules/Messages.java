package org.cairnfield.curation.rules;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Reason_commonPractice;
	public static String Reason_judgementNotMeasured;
	public static String Reason_onSimulatedCampusesWithPlanted;
	public static String Remedy_accessPoint;
	public static String Remedy_another;
	public static String Remedy_averageInto;
	public static String Remedy_correctTheLevelsOfOf;
	public static String Remedy_countAs;
	public static String Remedy_exchangeXAndYOf;
	public static String Remedy_leaveOutOf;
	public static String Remedy_makeTheMapOfOf;
	public static String Remedy_others;
	public static String Remedy_putOnFloor;
	public static String Remedy_setAside;
	public static String Remedy_setAsideSurvey;
	public static String Remedy_takeDbForTheOffset;
	public static String Remedy_treatAsOneRadio;
	public static String RuleRun_at;
	public static String RuleWords_and;
	public static String RuleWords_db;
	public static String RuleWords_more;
	public static String Subject_floor;
	public static String SurveyedMap_noDevice;
	public static String Topic_accessPoint;
	public static String Units_floor;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
