package org.cairnfield.ui.tests.wander;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Unreachable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;

/** Does one act after the other, and looks after each whether all is well. Runs in the workbench that is wandered through. */
final class Wanderer {

	private final Path folder;
	private final Dice dice;
	private final List<Act> acts = new ArrayList<>();
	private final List<String> errors = new ArrayList<>();
	private int steps;

	/**
	 * @param folder for the list of steps and for survey files
	 * @param seed   decides what is done
	 */
	Wanderer(Path folder, long seed) {
		this.folder = folder;
		dice = new Dice(seed);
		acts.addAll(EveryonesActs.all());
		acts.addAll(new StewardActs(folder).all());
		acts.addAll(new ReviewerActs().all());
		acts.addAll(LeadActs.all());
		Platform.addLogListener((status, plugin) -> hear(status));
	}

	private synchronized void hear(IStatus status) {
		if (status.getSeverity() == IStatus.ERROR) {
			errors.add(
					status.getMessage() + (status.getException() == null ? "" : ": " + trace(status.getException())));
		}
	}

	private static String trace(Throwable problem) {
		java.io.StringWriter text = new java.io.StringWriter();
		problem.printStackTrace(new java.io.PrintWriter(text));
		return text.toString();
	}

	/** Wanders until a moment by {@link System#currentTimeMillis}. */
	void until(long endMillis) throws Exception {
		Dialogs.answerAll(dice); // a draft that was kept for later is offered at the start
		while (System.currentTimeMillis() < endMillis) {
			step();
		}
	}

	private void step() throws Exception {
		Act act = dice.act(acts);
		try {
			note(++steps + " " + act.name());
			act.doing().with(dice);
			note("  done");
		} catch (NotNow e) {
			note("  not now: " + e.getMessage());
		} catch (Unreachable e) {
			note("  not now: " + e.getMessage());
		} catch (AssertionError e) { // a question on the user interface thread wraps what it throws
			if (!(e.getCause() instanceof NotNow) && !isGone(e.getCause())) {
				throw e;
			}
			note("  not now: " + e.getCause().getMessage());
		}
		Ui.waitUntilIdle();
		Dialogs.answerAll(dice);
		Ui.waitUntilIdle();
		check();
	}

	/** What the robot was about to use is no longer there, such as a line of a list that was filled again. */
	private static boolean isGone(Throwable problem) {
		return problem instanceof SWTException swt && swt.code == SWT.ERROR_WIDGET_DISPOSED;
	}

	private void check() throws Exception {
		synchronized (this) {
			if (!errors.isEmpty()) {
				throw new AssertionError("in the log: " + String.join("\n", errors));
			}
		}
		if (steps % 5 == 0) {
			checkWhatIsSaved();
		}
	}

	/** Whatever is not called unsaved must be what the disk has. */
	private void checkWhatIsSaved() throws Exception {
		ArchiveSession session = Sessions.workbench().current().orElse(null);
		if (session == null || session.past().isPresent() || Ui.ask(session::isModified)) {
			return;
		}
		String shown = Ui.ask(() -> session.open().digest());
		try (OpenArchive onDisk = new ArchiveStore().open(session.folder(), Mode.READ)) {
			if (!onDisk.damages().isEmpty()) {
				throw new AssertionError("saved, and damaged: " + onDisk.damages());
			}
			if (!shown.equals(onDisk.digest()) && !Ui.ask(session::isModified)) {
				throw new AssertionError("what is on disk is not what is shown, though nothing is unsaved");
			}
		}
	}

	/** The list of steps, for whoever has to find out what led to a problem. */
	void note(String line) throws Exception {
		Files.writeString(folder.resolve("steps"), LocalTime.now().truncatedTo(ChronoUnit.SECONDS) + " " + line + '\n',
				StandardOpenOption.CREATE, StandardOpenOption.APPEND);
	}
}
