package org.cairnfield.ui.save;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.cairnfield.archive.history.Person;
import org.cairnfield.core.task.Progress;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.osgi.util.NLS;
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
		return inName(session, Messages.Saving_saving, person -> session.open().save(person));
	}

	/** What saves, and names who did. */
	@FunctionalInterface
	public interface NamedStep {
		void run(Person person) throws Exception;
	}

	/** Likewise, and shows how far it is. */
	@FunctionalInterface
	public interface LongStep {
		/** @throws CancellationException once the progress is cancelled */
		void run(Person person, Progress progress) throws Exception;
	}

	/**
	 * Saves in the name of who sits at the workbench, as {@link #whileBusy} does. Where that recorded what somebody else had
	 * saved under that other name first, the window says so.
	 */
	public static boolean inName(ArchiveSession session, String name, NamedStep step) {
		return inName(session, name, (person, progress) -> step.run(person));
	}

	/** Likewise for what takes long, shows how far it is and can be cancelled; false where it was. */
	public static boolean inName(ArchiveSession session, String name, LongStep step) {
		session.settle();
		Person person = Preferences.person();
		Optional<String> other = savedBy(session).filter(saver -> !saver.equals(person.name()));
		boolean done = whileBusy(name, progress -> step.run(person, progress));
		if (done) {
			session.saved();
			other.ifPresent(Saving::tellOf);
		}
		return done;
	}

	private static Optional<String> savedBy(ArchiveSession session) {
		try {
			return session.open().savedBy();
		} catch (IOException e) {
			return Optional.empty(); // saving meets the same trouble and tells
		}
	}

	private static void tellOf(String other) {
		Notices.workbench().say(new Notice("recorded", Notice.Kind.INFORMATION,
				NLS.bind(Messages.Saving_whatHadSavedIsA, other),
				List.of(new Notice.Action(Messages.Saving_dismiss, () -> Notices.workbench().remove("recorded")))));
	}

	/** Does a step on another thread while the window takes no input. */
	public static boolean whileBusy(String name, Step step) {
		return whileBusy(name, progress -> step.run());
	}

	/** Likewise, and shows how far it is. */
	@FunctionalInterface
	public interface WatchedStep {
		/** @throws CancellationException once the progress is cancelled */
		void run(Progress progress) throws Exception;
	}

	/** Likewise for what takes long, shows how far it is and can be cancelled; false where it was. */
	public static boolean whileBusy(String name, WatchedStep step) {
		if (busy) {
			return false;
		}
		Throwable problem = null;
		busy = true;
		try {
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
				try {
					step.run(Work.progress(monitor));
				} catch (CancellationException e) {
					throw new InterruptedException();
				} catch (Exception e) {
					throw new InvocationTargetException(e);
				}
			});
		} catch (InvocationTargetException e) {
			problem = e.getCause();
		} catch (InterruptedException e) {
			return false;
		} finally {
			busy = false; // before the person is told, so that drafts are kept and the way out is open meanwhile
		}
		if (problem != null) {
			Problems.show(name, problem);
		}
		return problem == null;
	}

	/** Whether something is going to disk just now. */
	public static boolean isBusy() {
		return busy;
	}
}
