package org.cairnfield.ui.save;

import java.lang.reflect.InvocationTargetException;

import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.ui.PlatformUI;

/** What goes to disk at the person's word. */
public final class Saving {

	/** What may take a while and must see a model that nobody changes. */
	@FunctionalInterface
	public interface Step {
		void run() throws Exception;
	}

	private static boolean busy;

	private Saving() {
	}

	/** Saves; false where it failed, which the person has been told. */
	public static boolean save(ArchiveSession session) {
		boolean done = whileBusy("Saving", () -> session.open().save());
		if (done) {
			session.saved();
		}
		return done;
	}

	/** Does a step on another thread while the window takes no input. */
	public static boolean whileBusy(String name, Step step) {
		if (busy) {
			return false;
		}
		busy = true;
		try {
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
				try {
					step.run();
				} catch (Exception e) {
					throw new InvocationTargetException(e);
				}
			});
			return true;
		} catch (InvocationTargetException e) {
			Problems.show(name, e.getCause());
			return false;
		} catch (InterruptedException e) {
			return false;
		} finally {
			busy = false;
		}
	}

	/** Whether something is going to disk just now. */
	public static boolean isBusy() {
		return busy;
	}
}
