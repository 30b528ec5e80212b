package org.cairnfield.ui.internal.findings;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String EffectReader_computingTheEffectOfThe;
	public static String EffectReader_computingTheEffectOnHeld;
	public static String EffectReader_theEffectCouldNotBe;
	public static String EffectReader_theEffectOfARemedy;
	public static String EffectReader_theEffectWasNotComputed;
	public static String FindingDetails_about;
	public static String FindingDetails_aboutTheFinding;
	public static String FindingDetails_andMore;
	public static String FindingDetails_applyRemedies;
	public static String FindingDetails_applyTheRemedy;
	public static String FindingDetails_compare;
	public static String FindingDetails_effect;
	public static String FindingDetails_findingsAreSelectedHaveA;
	public static String FindingDetails_noOpenFindings;
	public static String FindingDetails_otherwiseThanUsual;
	public static String FindingDetails_remedy;
	public static String FindingDetails_remedy2;
	public static String FindingDetails_remedyFindings;
	public static String FindingDetails_rule;
	public static String FindingDetails_selectAFindingToSee;
	public static String FindingDetails_showThePlace;
	public static String FindingDetails_theWaiverCoversNothingThat;
	public static String FindingDetails_thresholdsOfTheRule;
	public static String FindingDetails_waive;
	public static String FindingDetails_whichRemedy;
	public static String FindingDetails_whyItIsAllRight;
	public static String FindingDetails_withdrawTheWaiver;
	public static String FindingEvidence_elsewhere;
	public static String FindingEvidence_theWholeArchive;
	public static String FindingsView_doneUndoTakesItBack;
	public static String FindingsView_finding;
	public static String FindingsView_findings;
	public static String FindingsView_group;
	public static String FindingsView_noArchiveIsOpen;
	public static String FindingsView_onlyOfTheSelectedSamples;
	public static String FindingsView_remedy;
	public static String FindingsView_rightHere;
	public static String FindingsView_severity;
	public static String FindingsView_whatIsWaived;
	public static String Grouping_byFloor;
	public static String Grouping_byRule;
	public static String Grouping_bySeverity;
	public static String Grouping_errorsPositionsSuffer;
	public static String Grouping_notesWorthKnowing;
	public static String Grouping_warningsLikelyWrong;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
