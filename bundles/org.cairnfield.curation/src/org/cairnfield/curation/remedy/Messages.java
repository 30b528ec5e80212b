package org.cairnfield.curation.remedy;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AverageSamplesCommand_averageScans;
	public static String LeaveOutReadingsCommand_leaveOutReadingsOf;
	public static String RemedyCommands_accessPoint;
	public static String RemedyCommands_averageScans;
	public static String RemedyCommands_countAsOthers;
	public static String RemedyCommands_leaveOutReadings;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
