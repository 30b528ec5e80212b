package org.cairnfield.ui.problem;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Says what happened, to what, and what to do; and logs what only a developer can mend. */
public final class Problems {

	private Problems() {
	}

	/** For what a person asked for and did not get. */
	public static void show(String what, Throwable problem) {
		if (isUnexpected(problem)) {
			log().log(Status.error(what, problem));
		}
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		MessageDialog.openError(window == null ? null : window.getShell(), what, text(problem));
	}

	/** For what happens in the background and can wait: the log only. */
	public static void log(String what, Throwable problem) {
		log().log(Status.error(what, problem));
	}

	/** The message for people; a failure that says nothing of itself is named. */
	public static String text(Throwable problem) {
		String message = problem.getMessage();
		if (isUnexpected(problem)) {
			return NLS.bind(Messages.Problems_somethingWentWrongThatShould, problem);
		}
		return message == null || message.isBlank() ? problem.getClass().getSimpleName() : message;
	}

	private static boolean isUnexpected(Throwable problem) {
		return problem instanceof RuntimeException && !(problem instanceof IllegalArgumentException)
				|| problem instanceof Error;
	}

	private static ILog log() {
		return Platform.getLog(Problems.class);
	}
}
