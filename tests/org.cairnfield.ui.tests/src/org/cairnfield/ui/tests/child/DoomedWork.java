package org.cairnfield.ui.tests.child;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;

/** In a child workbench: sets one sample aside as soon as the archive is open, and goes on living until it is killed. */
public final class DoomedWork implements IStartup {

	/** How a child ends right after its change, before any timer has had a turn. */
	public enum Ending {
		/** It goes on living. */
		NONE,
		/** By a signal. */
		SIGNAL,
		/** With the session of the desktop. */
		SESSION,
		/** By a restart, before which the change is saved. */
		RESTART
	}

	/** Set in a child: the reason to set a sample aside for. */
	static final String REASON = "cairnfield.child.reason";
	/** May be set likewise: a file that is made when it is done. */
	static final String DONE = "cairnfield.child.done";
	/** May be set likewise: name of an {@link Ending}. */
	static final String ENDING = "cairnfield.child.ending";

	@Override
	public void earlyStartup() {
		String reason = System.getProperty(REASON);
		if (reason == null) {
			return;
		}
		Ending ending = Ending.valueOf(System.getProperty(ENDING, Ending.NONE.name()));
		Ui.waitUntil("the child has its archive open", () -> Sessions.workbench().current().isPresent());
		Ui.waitUntilIdle();
		Ui.run(() -> {
			ArchiveSession session = Sessions.workbench().current().get();
			Survey survey = session.archive().getSites().get(0).getSurveys().get(0);
			session.run(SetSampleStateCommand.setAside(List.of(new SampleRef(survey, 0)), reason));
			end(ending);
		});
		if (ending == Ending.RESTART) {
			Hand.click(Widgets.button("Save"));
		}
		String done = System.getProperty(DONE);
		if (done != null) {
			try {
				Files.createFile(Path.of(done));
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			}
		}
	}

	private static void end(Ending ending) {
		switch (ending) {
		case SIGNAL -> signal();
		case SESSION -> Display.getCurrent().close(); // sends the event that the desktop's session manager sends
		case RESTART -> Display.getCurrent().asyncExec(PlatformUI.getWorkbench()::restart);
		case NONE -> {}
		}
	}

	/** Comes back when it is sent. */
	private static void signal() {
		try {
			new ProcessBuilder("kill", "-TERM", Long.toString(ProcessHandle.current().pid())).start().waitFor();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
	}
}
