package org.cairnfield.ui.internal.samples;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String FilterBar_filter;
	public static String FilterBar_filterHelp;
	public static String FilterBar_filterOfTheSamples;
	public static String FilterBar_whatCanBeWrittenHere;
	public static String InlineBar_cancel;
	public static String InlineBar_close;
	public static String PlaceEditing_nothingCanBeChanged;
	public static String PlaceEditing_selectTheSampleWhosePosition;
	public static String RowEditor_of;
	public static String RowWindow_scrollTheRows;
	public static String SampleActions_aReasonIsMissingWrite;
	public static String SampleActions_chooseTheFile;
	public static String SampleActions_copyingSamples;
	public static String SampleActions_deviceAtFault;
	public static String SampleActions_export;
	public static String SampleActions_exportAsCsvAddressesOf;
	public static String SampleActions_exportingSamples;
	public static String SampleActions_exportSamples;
	public static String SampleActions_floorOf;
	public static String SampleActions_measuredTwice;
	public static String SampleActions_noneOfIsSetAside;
	public static String SampleActions_nothingCanBeChanged;
	public static String SampleActions_notPartOfTheBuilding;
	public static String SampleActions_positionDoubtful;
	public static String SampleActions_selectSamplesFirst;
	public static String SampleActions_setAside;
	public static String SampleActions_setFloor;
	public static String SampleActions_theirXAndYAre;
	public static String SampleActions_theSitesOfHaveNo;
	public static String SampleActions_theyAreAllOnThat;
	public static String SampleActions_theyAreAllSetAside;
	public static String SampleActions_whySetAside;
	public static String SampleActions_writtenTo;
	public static String SampleGrid_1Warning;
	public static String SampleGrid_samples;
	public static String SampleGrid_setAsideCourierS;
	public static String SampleGrid_wristGuideA;
	public static String SamplesHandler_theViewOfTheSamples;
	public static String SamplesPanel_arrangingTheSamples;
	public static String SamplesPanel_noArchiveIsOpenOpen;
	public static String SamplesPanel_noSamplesHereChooseA;
	public static String SamplesPanel_ofSamplesShown;
	public static String SamplesPanel_ofThemHiddenByThe;
	public static String SamplesPanel_readOnly;
	public static String SamplesPanel_samplesBeingLookedThrough;
	public static String SamplesPanel_selected;
	public static String SamplesPanel_selectingSamples;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
