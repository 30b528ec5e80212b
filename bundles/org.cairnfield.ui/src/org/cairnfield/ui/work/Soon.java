package org.cairnfield.ui.work;

import org.eclipse.swt.widgets.Display;

/**
 * Runs something a little later, once for however often it was asked for until then. What is due can be waited for, see
 * {@link #isAnyDue}. For the user interface thread only.
 */
public final class Soon {

	private static int allDue;

	private final int millis;
	private final Runnable action;
	private final Runnable timer = this::run;
	private boolean due;

	/**
	 * @param millis after the first request; 0 for right after the event that is being handled
	 * @param action must bear that its widgets are gone
	 */
	public Soon(int millis, Runnable action) {
		this.millis = millis;
		this.action = action;
	}

	/** Asks for it; does nothing where it is due already. */
	public void request() {
		if (!due) {
			due = true;
			allDue++;
			if (millis == 0) {
				Display.getCurrent().asyncExec(timer);
			} else {
				Display.getCurrent().timerExec(millis, timer);
			}
		}
	}

	/** Asks for it, counting the time from now on: for what waits until nothing more is typed. */
	public void postpone() {
		cancel();
		request();
	}

	/** It need not be done. */
	public void cancel() {
		if (due) {
			due = false;
			allDue--;
			if (millis != 0) {
				Display.getCurrent().timerExec(-1, timer);
			}
		}
	}

	private void run() {
		if (due) {
			due = false;
			allDue--;
			action.run();
		}
	}

	/** Whether it is still to be done. */
	public boolean isDue() {
		return due;
	}

	/** Whether anything is to be done soon, in any part of the workbench. */
	public static boolean isAnyDue() {
		return allDue > 0;
	}
}
