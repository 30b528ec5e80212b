package org.cairnfield.archive.internal.disk;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String DiskFaults_aLimitForThisAccount;
	public static String DiskFaults_askForPermissionOrCopy;
	public static String DiskFaults_copyTheArchiveToA;
	public static String DiskFaults_deleteWhatIsNotNeeded;
	public static String DiskFaults_isGone;
	public static String DiskFaults_kibLeft;
	public static String DiskFaults_lookAfterTheDiskOf;
	public static String DiskFaults_lookWhoMovesFilesThere;
	public static String DiskFaults_makeRoomThereAndTry;
	public static String DiskFaults_noPermissionToWrite;
	public static String DiskFaults_theDiskOfIsFull;
	public static String DiskFaults_theDiskOfIsRead;
	public static String DiskFaults_thoughTheDiskItselfHas;
	public static String DraftFile_itDoesNotBeginAs;
	public static String DraftFile_itDoesNotMatchIts;
	public static String DraftFile_itDoesNotTellWhat;
	public static String DraftFile_itHasALineThat;
	public static String DraftFile_itWasChangedWhileIt;
	public static String DraftFile_itWasCutOff;
	public static String DraftFile_itWasCutOffOr;
	public static String DraftFile_itWasCutOffOr2;
	public static String DraftFile_itWasWrittenByAnother;
	public static String FolderLock_closeItThereFirst;
	public static String FolderLock_closeItThereFirstOr;
	public static String FolderLock_openItForReadingOnly;
	public static String FolderLock_theLockOfThisProgram;
	public static String FolderView_askForPermission;
	public static String FolderView_canNotBeRead;
	public static String FolderView_noPlainFileAndNot;
	public static String FolderView_replaceItByWhatIt;
	public static String GitEnclosure_borrowsObjectsOfAnotherRepository;
	public static String GitEnclosure_cloneTheArchiveToWork;
	public static String GitEnclosure_fileOrFolder;
	public static String GitEnclosure_haveItNameACommit;
	public static String GitEnclosure_isLargerThanAnyThat;
	public static String GitEnclosure_names;
	public static String GitEnclosure_restoreItFromACopy;
	public static String GitEnclosure_runGitRepackAD;
	public static String GitEnclosure_sharesItsGitFolderWith;
	public static String GitEnclosure_theHistoryOfIsNot;
	public static String GitEnclosure_whereItIsNotKnown;
	public static String GitUnderway_aCherryPick;
	public static String GitUnderway_aCherryPickOrRevert;
	public static String GitUnderway_aMerge;
	public static String GitUnderway_aRebase;
	public static String GitUnderway_aRevert;
	public static String GitUnderway_aSeriesOfPatches;
	public static String GitUnderway_finishItWithGitContinue;
	public static String GitUnderway_withPlainGitWasBegun;
	public static String HeadTrace_holdsNoIdOfA;
	public static String HeadTrace_isEmpty;
	public static String HeadTrace_isMissing;
	public static String HeadTrace_namesNeitherABranchNor;
	public static String Journal_theJournalDoesNotMatch;
	public static String Journal_theJournalHasALine;
	public static String Journal_theJournalHasNoBeginning;
	public static String Journal_theJournalIsLargerThan;
	public static String Journal_theJournalIsNotText;
	public static String Places_goesThroughASymbolicLink;
	public static String Places_isASymbolicLinkWhich;
	public static String Places_isNoPlain;
	public static String Places_isNotOpened;
	public static String Places_leadsOutOfTheArchive;
	public static String Places_moveTheFileIntoThe;
	public static String Places_replaceByWhatItPoints;
	public static String Places_whereItIsNotKnown;
	public static String Save_askForPermissionOrCopy;
	public static String Save_nothingWasSaved;
	public static String Save_nothingWasSavedCanNot;
	public static String Save_nothingWasSavedWas;
	public static String Save_theSaveCountsButIs;
	public static String SaveRecovery_anInterruptedSaveCanNot;
	public static String SaveRecovery_anInterruptedSaveCanNot2;
	public static String SaveRecovery_changedByAnotherProgramWhile;
	public static String SaveRecovery_restoreTheLastSavePoint;
	public static String SaveRecovery_restoreTheLastSavePoint2;
	public static String SaveRecovery_restoreTheLastSavePoint3;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
