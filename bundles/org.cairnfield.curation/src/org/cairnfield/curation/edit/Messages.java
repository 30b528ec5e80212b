package org.cairnfield.curation.edit;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Editable_changeTheOf;
	public static String EditableRules_aMapFromCannotEnd;
	public static String EditableRules_anArchiveNeedsAName;
	public static String EditableRules_aSurveyIsForTraining;
	public static String EditableRules_channelIsNotOneOf;
	public static String EditableRules_isNamedTwice;
	public static String EditableRules_isNotInitialsOfAt;
	public static String EditableRules_nameSitesByTheirIds;
	public static String EditableRules_noSiteOfThisArchive;
	public static String EditableRules_thereIsNoSite;
	public static String EditableText_ghz;
	public static String EditableText_isNoDayWriteIt;
	public static String EditableText_isNoneOf;
	public static String EditableText_isNoNumber;
	public static String EditableText_whole;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
