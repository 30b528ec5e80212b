package org.cairnfield.ui.internal.app;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ActionBars_archive;
	public static String ActionBars_edit;
	public static String ActionBars_help;
	public static String ActionBars_showView;
	public static String ActionBars_window;
	public static String PersonItem_savePointsWaiversAndVerdicts;
	public static String WindowTitle_cairnfield;
	public static String WindowTitle_readOnly;
	public static String WindowTitle_release;
	public static String WindowTitle_savePoint;
	public static String WindowTitle_unsavedChanges;
	public static String Workspace_cairnfieldIsRunningAlready;
	public static String Workspace_cairnfieldIsRunningAlreadyAnd;
	public static String Workspace_cancel;
	public static String Workspace_close;
	public static String Workspace_goToTheWindowThat;
	public static String Workspace_goToTheWindowThat2;
	public static String Workspace_openASecondOne;
	public static String Workspace_theWorkspaceCouldNotBe;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
