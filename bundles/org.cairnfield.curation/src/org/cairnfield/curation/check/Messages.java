package org.cairnfield.curation.check;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Judgement_lookBeforeYouApplyThe;
	public static String Judgement_ofWhatThisRuleNames;
	public static String Judgement_soNoRemedyIsOffered;
	public static String KeptWaiver_andMore;
	public static String KeptWaiver_nothingThatTheRulesReport;
	public static String RulesAsTold_default;
	public static String RulesAsTold_forThisOnce;
	public static String RulesAsTold_isAskedForThisOnce;
	public static String RulesAsTold_isNoNumberSoThe;
	public static String RulesAsTold_isSetTimesToThe;
	public static String RulesAsTold_isSwitchedOffKeptWith;
	public static String RulesAsTold_keptWithTheArchive;
	public static String RulesAsTold_setItAgainOrReset;
	public static String RulesAsTold_soTheDefaultOfIs;
	public static String RulesAsTold_thisVersionDoesNotKnow;
	public static String SetRuleSettingsCommand_setTheRules;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
