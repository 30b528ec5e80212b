package org.cairnfield.ui.internal.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;

import org.cairnfield.archive.Draft;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.widgets.Display;

/** Keeps unsaved changes in a draft a few seconds after they were made, so that a crash loses no more than those seconds. */
public final class Drafts implements SessionListener {

	private static final int PATIENCE_MILLIS = 3000;

	private ArchiveSession session;
	private boolean waiting;

	public Drafts() {
		Sessions.workbench().add(this);
	}

	/** Where drafts are kept, of all archives. */
	public static Path folder() {
		return Platform.getStateLocation(Platform.getBundle("org.cairnfield.ui")).append("drafts").toPath();
	}

	/** The person does not want what was not saved: deletes the draft of it. */
	public static void forget(ArchiveSession session) {
		try {
			for (Draft draft : session.open().drafts(folder())) {
				if (draft.by().filter(by -> by.pid() == ProcessHandle.current().pid()).isPresent()) {
					session.open().discardDraft(draft);
				}
			}
		} catch (IOException e) {
			Problems.log("The draft could not be deleted", e);
		}
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		writeSoon();
	}

	@Override
	public void structureChanged() {
		writeSoon();
	}

	@Override
	public void ledgersChanged() {
		writeSoon();
	}

	private void writeSoon() {
		if (!waiting) {
			waiting = true;
			Display.getCurrent().timerExec(PATIENCE_MILLIS, this::write);
		}
	}

	private void write() {
		waiting = false;
		if (session == null || !session.isModified()) {
			return;
		}
		if (Saving.isBusy()) {
			writeSoon();
			return;
		}
		try {
			session.open().writeDraft(folder());
		} catch (IOException e) {
			Problems.log("The unsaved changes could not be kept in a draft", e);
		}
	}
}
