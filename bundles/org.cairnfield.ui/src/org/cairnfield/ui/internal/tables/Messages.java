package org.cairnfield.ui.internal.tables;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ColumnChoice_columns;
	public static String TableTools_copy;
	public static String TableTools_saveTheTableAsCsv;
	public static String TableTools_saveTheTableAsCsv2;
	public static String TableTools_theTableWasNotSaved;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
