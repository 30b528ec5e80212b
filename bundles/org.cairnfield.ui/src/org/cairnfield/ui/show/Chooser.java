package org.cairnfield.ui.show;

import org.cairnfield.ui.prefs.Preferences;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;

/** Opens choosers of files and folders where the last one of the same purpose was left. */
public final class Chooser {

	private Chooser() {
	}

	/**
	 * Opens a chooser.
	 *
	 * @param purpose such as "export"; those of one purpose begin in one folder
	 * @return what {@link FileDialog#open} does
	 */
	public static String open(FileDialog dialog, String purpose) {
		dialog.setFilterPath(Preferences.get(key(purpose), ""));
		String chosen = dialog.open();
		keep(purpose, chosen == null ? "" : dialog.getFilterPath());
		return chosen;
	}

	/** Likewise of a folder. */
	public static String open(DirectoryDialog dialog, String purpose) {
		dialog.setFilterPath(Preferences.get(key(purpose), ""));
		String chosen = dialog.open();
		keep(purpose, chosen == null ? "" : chosen);
		return chosen;
	}

	private static String key(String purpose) {
		return "folder." + purpose;
	}

	private static void keep(String purpose, String folder) {
		if (folder != null && !folder.isEmpty()) {
			Preferences.put(key(purpose), folder);
		}
	}
}
