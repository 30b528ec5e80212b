package org.cairnfield.ui.internal.rules;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String RuleNotices_andMore;
	public static String RuleNotices_dismiss;
	public static String RuleNotices_ruleSetting;
	public static String RuleNotices_showTheRules;
	public static String RulePane_askThisRule;
	public static String RulePane_backTo;
	public static String RulePane_itGoesByNoNumber;
	public static String RulePane_keptWithTheArchiveA;
	public static String RulePane_reset;
	public static String RulePane_resetNumber;
	public static String RulePane_whyOtherwiseThanUsual;
	public static String RulesPage_noArchiveIsOpenAn;
	public static String RulesPage_readOnly;
	public static String RulesPage_theArchiveKeepsThisEverybody;
	public static String RuleTree_about;
	public static String RuleTree_rule;
	public static String RuleTree_rules;
	public static String RuleTree_setting;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
