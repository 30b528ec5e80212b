package org.cairnfield.report.files;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String OutputFolder_nameAFolderThatCan;
	public static String OutputFolder_thatIsNotPermitted;
	public static String OutputFolder_theFileSystemRefuses;
	public static String OutputFolder_theFolderCannotBeMade;
	public static String OutputFolder_thereIsAFileOf;
	public static String RunFiles_dbscanMinpts;
	public static String RunFiles_heldOut;
	public static String RunFiles_noPositionBy;
	public static String RunFiles_principalComponents;
	public static String RunFiles_samplesAccessPointsRepresentation;
	public static String RunFiles_samplesAgainstAMapOf;
	public static String RunFiles_test;
	public static String Tables_1Cell;
	public static String Tables_cells;
	public static String Tables_dbscanMinpts;
	public static String Tables_largeClustersCut;
	public static String Tables_twoLevelsGroups;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
