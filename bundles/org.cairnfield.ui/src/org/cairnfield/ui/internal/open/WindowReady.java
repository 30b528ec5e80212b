package org.cairnfield.ui.internal.open;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.ui.PlatformUI;

/**
 * Keeps questions back until there is a window to ask them in: at the start an archive is read beside the making of the
 * window. For the user interface thread only.
 */
public final class WindowReady {

	private static final List<Runnable> WAITING = new ArrayList<>();

	private WindowReady() {
	}

	/** Runs something as soon as the window is there: now, as a rule. */
	public static void run(Runnable question) {
		if (PlatformUI.isWorkbenchRunning() && PlatformUI.getWorkbench().getWorkbenchWindowCount() > 0
				&& PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell().isVisible()) {
			question.run();
		} else {
			WAITING.add(question);
		}
	}

	/** The window is there now. */
	public static void opened() {
		List<Runnable> due = List.copyOf(WAITING);
		WAITING.clear();
		due.forEach(Runnable::run);
	}
}
