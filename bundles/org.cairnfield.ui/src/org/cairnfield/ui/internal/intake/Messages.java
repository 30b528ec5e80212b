package org.cairnfield.ui.internal.intake;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String FilesPage_addFiles;
	public static String FilesPage_allFiles;
	public static String FilesPage_chooseTheFilesOfA;
	public static String FilesPage_in;
	public static String FilesPage_remove;
	public static String FilesPage_surveyFiles;
	public static String FilesPage_tablesCsvTsvTxtGz;
	public static String IntakeWizard_beforeAnIntake;
	public static String IntakeWizard_cancel;
	public static String IntakeWizard_cancelledNothingWasRead;
	public static String IntakeWizard_cancelledNothingWasTakenIn;
	public static String IntakeWizard_makingASavePoint;
	public static String IntakeWizard_nothingWasTakenIn;
	public static String IntakeWizard_saveAndTakeIn;
	public static String IntakeWizard_takeIn;
	public static String IntakeWizard_takeInSurveyFiles;
	public static String IntakeWizard_thereAreUnsavedChangesThey;
	public static String IntakeWizard_thereWasNothingNew;
	public static String IntakeWizard_unsavedChanges;
	public static String LayoutPage_asTheHeaderSays;
	public static String LayoutPage_asTold;
	public static String LayoutPage_cancelledThePreviewIsAs;
	public static String LayoutPage_clickToChangeIt;
	public static String LayoutPage_column;
	public static String LayoutPage_columnsOfThemLevelsOf;
	public static String LayoutPage_decimalMark;
	public static String LayoutPage_decimalMark2;
	public static String LayoutPage_eachLineSaysWhatWas;
	public static String LayoutPage_firstRowNamesColumns;
	public static String LayoutPage_firstRowsOfTheFile;
	public static String LayoutPage_howTheFilesAreUnderstood;
	public static String LayoutPage_isFor;
	public static String LayoutPage_isNoLengthWriteHow;
	public static String LayoutPage_isNoSeparatorChooseOne;
	public static String LayoutPage_layout;
	public static String LayoutPage_metresToAUnitOf;
	public static String LayoutPage_metresWhereTheHeaderNames;
	public static String LayoutPage_moreColumns;
	public static String LayoutPage_notHeard;
	public static String LayoutPage_notHeard2;
	public static String LayoutPage_separator;
	public static String LayoutPage_surveyFiles;
	public static String LayoutPage_swapXAndY;
	public static String OutcomePage_besideEachSurveyFileAs;
	public static String OutcomePage_folder;
	public static String OutcomePage_keepQuarantinedRowsIn;
	public static String OutcomePage_line;
	public static String OutcomePage_noRowCanBeTaken;
	public static String OutcomePage_nothingIsInTheArchive;
	public static String OutcomePage_nothingItsContentIsIn;
	public static String OutcomePage_nothingNoRowCanBe;
	public static String OutcomePage_ofItsSurvey;
	public static String OutcomePage_rowsInQuarantine;
	public static String OutcomePage_sayWhetherNamesThatAre;
	public static String OutcomePage_survey;
	public static String OutcomePage_theArchiveCannotBeChanged;
	public static String OutcomePage_theArchiveHasAllOf;
	public static String OutcomePage_theFirst;
	public static String OutcomePage_thereIsNoFolderChoose;
	public static String OutcomePage_whatComesOfIt;
	public static String OutcomePage_whatIsTakenIn;
	public static String OutcomePage_whatToDo;
	public static String OutcomePage_wouldBeTakenInNo;
	public static String OutcomePage_wouldBeTakenInWould;
	public static String PlacePage_asTheFileSays;
	public static String PlacePage_byColumn;
	public static String PlacePage_device;
	public static String PlacePage_floorLevel;
	public static String PlacePage_forTheFilesSelected;
	public static String PlacePage_giveTheSiteFloorAnd;
	public static String PlacePage_guessed;
	public static String PlacePage_isNoFloorWriteIts;
	public static String PlacePage_notSaid;
	public static String PlacePage_oneThatTheArchiveDoes;
	public static String PlacePage_site;
	public static String PlacePage_surveyFor;
	public static String PlacePage_surveyFor2;
	public static String PlacePage_testMeasuresTheMap;
	public static String PlacePage_trainingMakesTheMap;
	public static String PlacePage_whereEachFileGoes;
	public static String PlacePage_whereTheSurveysBelong;
	public static String SameNamesQuestion_everySiteHasItsOwn;
	public static String SameNamesQuestion_oneSenderHeardAtSeveral;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
