package org.cairnfield.ui.internal.app;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;

import org.cairnfield.ui.problem.Problems;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/**
 * The folder where the workbench keeps preferences, its windows and drafts: {@code .cairnfield/workbench} in the person's
 * home unless the command line names another. One program at a time writes there; the lock is one of the operating system,
 * which falls with the program however that ends.
 */
final class Workspace {

	private static final String USUAL = "workbench";
	private static final int MOST = 20;

	private Workspace() {
	}

	/** Takes the workspace for this program, or asks what to do where another program has it. False: the person gave up. */
	static boolean take(Display display) {
		Location location = Platform.getInstanceLocation();
		try {
			if (location.isSet()) {
				return location.lock() || tell(display, Path.of(location.getURL().getPath()), false);
			}
			Path home = Path.of(System.getProperty("user.home"), ".cairnfield");
			Path usual = Files.createDirectories(home.resolve(USUAL));
			if (location.set(url(usual), true)) {
				return true;
			}
			return tell(display, usual, true) && takeAnother(location, home);
		} catch (IOException e) {
			// a file system without locks
			Problems.log(Messages.Workspace_theWorkspaceCouldNotBe, e);
			return location.isSet() || unlocked(location);
		}
	}

	private static boolean unlocked(Location location) {
		try {
			return location.set(url(Path.of(System.getProperty("user.home"), ".cairnfield", USUAL)), false);
		} catch (IOException e) {
			throw new IllegalStateException(e);
		}
	}

	private static boolean takeAnother(Location location, Path home) throws IOException {
		for (int n = 2; n <= MOST; n++) {
			if (location.set(url(Files.createDirectories(home.resolve(USUAL + '-' + n))), true)) {
				return true;
			}
		}
		return false;
	}

	private static URL url(Path folder) throws IOException {
		return folder.toUri().toURL();
	}

	/** @return whether to go on with a workspace of its own */
	private static boolean tell(Display display, Path folder, boolean another) {
		Shell hidden = new Shell(display, SWT.NO_TRIM); // a dialog without a parent has no place in the list of windows
		try {
			String text = NLS.bind(Messages.Workspace_cairnfieldIsRunningAlreadyAnd, folder,
					another ? Messages.Workspace_goToTheWindowThat : Messages.Workspace_goToTheWindowThat2);
			return MessageDialog.open(another ? MessageDialog.QUESTION : MessageDialog.ERROR, hidden,
					Messages.Workspace_cairnfieldIsRunningAlready, text, 0,
					another ? new String[] { Messages.Workspace_openASecondOne, Messages.Workspace_cancel }
							: new String[] { Messages.Workspace_close }) == 0
					&& another;
		} finally {
			hidden.dispose();
		}
	}
}
