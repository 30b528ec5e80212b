package org.cairnfield.ui.internal.start;

import java.nio.file.Path;

import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.show.Chooser;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks for the folder of an archive. */
public final class ChooseArchive {

	private ChooseArchive() {
	}

	/** Opens the one chosen. */
	public static void open(Shell shell) {
		String folder = ask(shell, Messages.ChooseArchive_openAnArchive,
				Messages.ChooseArchive_chooseTheFolderThatHolds);
		if (folder != null) {
			Opening.open(Path.of(folder));
		}
	}

	/** Makes a new one; it is called like its folder. */
	public static void create(Shell shell) {
		String folder = ask(shell, Messages.ChooseArchive_newArchive, Messages.ChooseArchive_chooseOrMakeAnEmpty);
		if (folder != null) {
			Opening.create(Path.of(folder), Path.of(folder).getFileName().toString());
		}
	}

	private static String ask(Shell shell, String title, String message) {
		DirectoryDialog dialog = new DirectoryDialog(shell, SWT.OPEN);
		dialog.setText(title);
		dialog.setMessage(message);
		return Chooser.open(dialog, "archive");
	}
}
