package org.cairnfield.ui.internal.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.cairnfield.archive.Drafts;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/**
 * Keeps in a draft what is unsaved, and only that: written a little after each change and at once after an undo, deleted
 * when everything is saved or undone.
 */
public final class DraftKeeper implements SessionListener {

	private static final int PATIENCE_MILLIS = 2000;
	/** What was undone must not come back; several undos in a row are one. */
	private static final int AFTER_UNDO_MILLIS = 150;
	private static final String TROUBLE = "draft";
	private static final Path FOLDER = Platform.getStateLocation(Platform.getBundle("org.cairnfield.ui"))
			.append("drafts").toPath();

	private final Runnable write = this::write;
	/** The present one, also while a past state is on show. */
	private ArchiveSession session;
	private boolean waiting;

	public DraftKeeper() {
		Sessions.workbench().add(this);
	}

	/** Where drafts are kept, of all archives. */
	public static Path folder() {
		return FOLDER;
	}

	/** Writes the draft of a session that has unsaved work, at once; tells the person where that fails. */
	public static void keep(ArchiveSession session) {
		try {
			session.open().drafts().write(FOLDER, Preferences.person().name());
			Notices.workbench().remove(TROUBLE);
		} catch (IOException e) {
			tellOf(e);
		}
	}

	private static void tellOf(Exception e) {
		Problems.log(Messages.DraftKeeper_theUnsavedChangesCouldNot, e);
		Notices.workbench().say(new Notice(TROUBLE, Notice.Kind.WARNING,
				NLS.bind(Messages.DraftKeeper_aCrashWouldLoseThe, e.getMessage()), List.of()));
	}

	/** The person does not want what was not saved: deletes the drafts of it. */
	public static void forget(ArchiveSession session) {
		try {
			session.open().drafts().discardUnsaved();
		} catch (IOException e) {
			Problems.log(Messages.DraftKeeper_theDraftCouldNotBe, e);
		}
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		if (now == null || now.past().isEmpty()) {
			session = now;
			Notices.workbench().remove(TROUBLE);
		} else if (waiting) {
			write(); // the present one goes on being kept
		}
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

	@Override
	public void teamChanged() {
		writeSoon();
	}

	@Override
	public void stateChanged() {
		if (session == null || Saving.isBusy()) {
			return;
		}
		if (!session.isModified()) {
			dropOwn();
		} else if (session.commands().canRedo()) {
			waiting = true;
			Display.getCurrent().timerExec(AFTER_UNDO_MILLIS, write);
		}
	}

	private void dropOwn() {
		try {
			session.open().drafts().discardOwn();
		} catch (IOException e) {
			Problems.log(Messages.DraftKeeper_theDraftCouldNotBe, e);
		}
	}

	private void writeSoon() {
		if (!waiting) {
			waiting = true;
			Display.getCurrent().timerExec(PATIENCE_MILLIS, write);
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
		keepBeside(session);
	}

	/** Takes the changes out of the model, and leaves it to another thread to write them. */
	private void keepBeside(ArchiveSession of) {
		Drafts drafts = of.open().drafts();
		try {
			drafts.unsaved(FOLDER, Preferences.person().name())
					.ifPresent(unsaved -> Work.quietly(Messages.DraftKeeper_keepingUnsavedChanges, workers -> {
						drafts.write(unsaved);
						return unsaved;
					}, kept -> Notices.workbench().remove(TROUBLE), problem -> {
						if (of == session) {
							tellOf(problem);
						}
					}));
		} catch (IOException e) {
			tellOf(e);
		}
	}
}
