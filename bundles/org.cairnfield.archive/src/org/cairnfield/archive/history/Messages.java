package org.cairnfield.archive.history;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String ArchiveDiff_andMore;
	public static String ArchiveDiff_ruleSettingsChanged;
	public static String ArchiveDiff_setAside;
	public static String ArchiveDiff_takenBack;
	public static String ArchiveDiff_withAnotherReason;
	public static String ArchiveDiff_withAnotherTime;
	public static String FieldChange_notSet;
	public static String History_hasNoHistory;
	public static String History_makeASavePointWhich;
	public static String History_theHistoryOfIsDamaged;
	public static String HistoryCheck_runGitResetInThe;
	public static String HistoryCheck_thereIsNoTag;
	public static String LedgerAudit_theFolder;
	public static String LedgerLoss_putBackSince;
	public static String LedgerLoss_theFirst;
	public static String MergeAudit_byOn;
	public static String MergeAudit_ofRuleByAtKey;
	public static String MergeLoss_hasChangedOf;
	public static String MergeLoss_hasDroppedWhichIsIn;
	public static String MergeLoss_mergeAgainWithGitGit;
	public static String MergeLoss_orRestoreTheSavePoint;
	public static String MergeLoss_restoreTheSavePointWhich;
	public static String MergeLoss_theFirst;
	public static String MergeLoss_theMergeBy;
	public static String ObjectComparison_by;
	public static String ObjectComparison_byOn;
	public static String ObjectComparison_ofSplitTo;
	public static String PeopleAudit_aLeadHasSignedA;
	public static String PeopleAudit_lineNamesNoKey;
	public static String SignerHistory_asInBeforeWhichThe;
	public static String SignerHistory_begunIn;
	public static String SignerHistory_bringsTogetherTwoListsThat;
	public static String SignerHistory_changedIn;
	public static String SignerHistory_changesAndIsNotSigned;
	public static String SignerHistory_savePoint;
	public static String SignerHistory_signedBy;
	public static String SplitComparison_cluster;
	public static String SplitComparison_clusterRMarginCarrierNearest;
	public static String StateComparison_isDamagedInOneOf;
	public static String VerdictProof_badSignature;
	public static String VerdictProof_broughtByAMergeAlone;
	public static String VerdictProof_notSigned;
	public static String VerdictProof_signatureNotKnown;
	public static String VerdictProof_signedBySomebodyElse;
	public static String VerdictProof_signedByWhoEnteredIt;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
