package org.cairnfield.ui.internal.open;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.internal.draft.DraftKeeper;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/**
 * The one way out of an archive, whether another is opened, it is closed, or the program ends. A person is asked about
 * unsaved work, once. The end of the desktop's session and a signal cannot wait for an answer: what is unsaved then goes to
 * a draft, which the next start offers.
 */
public final class Leaving {

	private static final int PATIENCE_SECONDS = 3;

	private static volatile boolean endOfSession;
	private static ArchiveSession givenUp;
	private static volatile ArchiveSession left;

	private Leaving() {
	}

	/** From now on nobody is asked: what is unsaved is kept in a draft when the archive is left. */
	public static void endOfSession() {
		endOfSession = true;
	}

	/** Asks where there is unsaved work. False: the person wants to stay, or saving failed. */
	public static boolean mayLeave(Shell shell) {
		Optional<ArchiveSession> present = Sessions.workbench().present();
		givenUp = null;
		if (endOfSession) {
			return true;
		}
		if (Saving.isBusy()) {
			return false;
		}
		present.ifPresent(ArchiveSession::settle);
		return present.isEmpty() || !present.get().isModified() || ask(shell, present.get());
	}

	private static boolean ask(Shell shell, ArchiveSession session) {
		int answer = MessageDialog.open(MessageDialog.QUESTION_WITH_CANCEL, shell, Messages.Leaving_unsavedChanges,
				NLS.bind(Messages.Leaving_hasChangesThatWereNot, ModelText.name(session.archive())), 0,
				Messages.Leaving_save,
				Messages.Leaving_donTSave, Messages.Leaving_cancel);
		if (answer == 1) {
			givenUp = session;
			return true;
		}
		return answer == 0 && Saving.save(session);
	}

	/** Leaves the archive on show for good, after {@link #mayLeave}: gives its lock back. A draft stays only of what nobody was asked about. */
	static void leave() {
		Sessions.workbench().present().ifPresent(session -> {
			Sessions.workbench().backToPresent();
			Sessions.workbench().show(null);
			keepOrForget(session);
			OpenArchive archive = session.open();
			if (!archive.isPackingDue()
					|| !Saving.whileBusy(Messages.Leaving_packingTheHistory, progress -> archive.close(progress))) {
				close(session);
			}
			Notices.workbench().clear();
		});
	}

	/** The same at the end of the program, when there is no window any more. */
	public static void leaveAtEnd() {
		Sessions.workbench().present().ifPresent(session -> {
			keepOrForget(session);
			close(session);
		});
	}

	private static void keepOrForget(ArchiveSession session) {
		left = session;
		if (session.isModified() && session != givenUp) {
			DraftKeeper.keep(session);
		} else {
			DraftKeeper.forget(session);
		}
		givenUp = null;
	}

	private static void close(ArchiveSession session) {
		try {
			session.open().close();
		} catch (IOException e) {
			Problems.log(NLS.bind(Messages.Leaving_theLockOfCouldNot, session.folder()), e);
		}
	}

	/**
	 * Keeps unsaved work while the program is being ended from outside. Called by a thread of the JVM; lets the user interface
	 * do it, where that still answers, since the model is its.
	 */
	public static void keepBeforeTheEnd(Display display) {
		endOfSession = true;
		CountDownLatch kept = new CountDownLatch(1);
		try {
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					keep();
					kept.countDown();
				});
			}
			if (display.isDisposed() || !kept.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
				keep();
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
	}

	private static void keep() {
		Sessions.workbench().present().filter(session -> session != left && session.isModified())
				.ifPresent(DraftKeeper::keep);
	}
}
