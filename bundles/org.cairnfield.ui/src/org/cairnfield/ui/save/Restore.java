package org.cairnfield.ui.save;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Brings back an earlier state by a new save point: says first what that does, and afterwards offers the way back. */
public final class Restore {

	private static final String NOTICE = "restored";
	private static final int MOST_COUNTS = 8;

	/** What makes the new save point; empty where nothing had to be changed. */
	@FunctionalInterface
	public interface Change {
		Optional<SavePoint> of(OpenArchive archive, Person person) throws Exception;
	}

	private final ArchiveSession session;
	private final String what;

	private Restore(ArchiveSession session, String what) {
		this.session = session;
		this.what = what;
	}

	/**
	 * Makes the archive what it was at a save point, if the person still wants to when told what that does.
	 *
	 * @param what name of the state, such as "release 1.0.0"
	 */
	public static void state(Shell shell, ArchiveSession session, SavePoint point, String what) {
		Restore restore = new Restore(session, NLS.bind(Messages.Restore_restore, what));
		if (!session.open().damages().isEmpty()) {
			restore.ask(shell, NLS.bind(Messages.Restore_theArchiveBecomesWhatIt, what),
					Messages.Restore_restore2, NLS.bind(Messages.Restore_restored, what),
					(archive, person) -> archive.restore(point, person, null));
			return;
		}
		ArchiveDiff[] since = new ArchiveDiff[1];
		if (Saving.whileBusy(Messages.Restore_comparing, () -> {
			try (History history = session.open().history()) {
				since[0] = history.compareWithSaved(point);
			}
		})) {
			String changes = since[0].isEmpty() ? Messages.Restore_whatIsSavedIsLike
					: NLS.bind(Messages.Restore_thisUndoesWhatWasChanged, counts(since[0]));
			restore.ask(shell, NLS.bind(Messages.Restore_theArchiveBecomesWhatIt2, what, changes),
					Messages.Restore_restore2,
					NLS.bind(Messages.Restore_restored, what),
					(archive, person) -> archive.restore(point, person, null));
		}
	}

	/** Takes back what one save point changed, likewise. */
	public static void change(Shell shell, ArchiveSession session, SavePoint point) {
		new Restore(session, NLS.bind(Messages.Restore_revert, point.shortId())).ask(shell,
				NLS.bind(Messages.Restore_whatSavePointChangedIs, point.shortId(), point.summary()),
				Messages.Restore_revert2, NLS.bind(Messages.Restore_reverted, point.shortId()),
				(archive, person) -> Optional.of(archive.undo(point, person, null)));
	}

	private static String counts(ArchiveDiff diff) {
		List<String> lines = new ArrayList<>(diff.summary());
		int more = lines.size() - MOST_COUNTS;
		return more <= 0 ? String.join(", ", lines)
				: NLS.bind(Messages.Restore_andMore, String.join(", ", lines.subList(0, MOST_COUNTS)), more);
	}

	private void ask(Shell shell, String consequence, String button, String done, Change change) {
		boolean unsaved = session.isModified();
		String question = NLS.bind(Messages.Restore_aNewSavePointRecords, consequence,
				unsaved ? Messages.Restore_thereAreUnsavedChangesThey : "");
		if (MessageDialog.open(MessageDialog.QUESTION, shell, what, question, 0,
				unsaved ? Messages.Restore_saveAndGoOn : button, Messages.Restore_cancel) == 0) {
			make(done, change);
		}
	}

	private void make(String done, Change change) {
		OpenArchive archive = session.open();
		Person person = Preferences.person();
		SavePoint[] made = new SavePoint[1];
		boolean changed = Saving.whileBusy(what, () -> {
			if (archive.isModified()) {
				archive.savePoint(person, null);
			}
			made[0] = change.of(archive, person).orElse(null);
		});
		if (!changed) {
			if (archive.archive() != session.archive()) { // read again before it failed
				Sessions.workbench().showAgain(archive);
			}
			return;
		}
		Sessions.workbench().showAgain(archive);
		Notices.workbench()
				.say(made[0] == null
						? new Notice(NOTICE, Notice.Kind.INFORMATION, Messages.Restore_theArchiveIsLikeThat,
								List.of(dismiss()))
						: new Notice(NOTICE, Notice.Kind.INFORMATION,
								NLS.bind(Messages.Restore_asSavePoint, done, made[0].shortId()),
								List.of(new Notice.Action(Messages.Restore_undo, () -> goBack(made[0])), dismiss())));
	}

	private static Notice.Action dismiss() {
		return new Notice.Action(Messages.Restore_dismiss, () -> Notices.workbench().remove(NOTICE));
	}

	/** To the state right before a save point; asks only where there is something to be lost sight of. */
	private void goBack(SavePoint made) {
		Optional<ArchiveSession> present = Sessions.workbench().present().filter(now -> now.open() == session.open());
		if (present.isEmpty()) {
			return;
		}
		Sessions.workbench().backToPresent();
		Restore back = new Restore(present.get(), NLS.bind(Messages.Restore_undo2, what));
		String before = made.parents().get(0);
		Change change = (archive, person) -> {
			try (History history = archive.history()) {
				return archive.restore(history.find(before), person, null);
			}
		};
		boolean untouched = !present.get().isModified() && isLast(present.get(), made);
		if (untouched) {
			back.make(Messages.Restore_thePreviousStateIsBack, change);
		} else {
			back.ask(null, NLS.bind(Messages.Restore_theArchiveBecomesWhatIt3, before.substring(0, 8)),
					Messages.Restore_restore2, Messages.Restore_thePreviousStateIsBack, change);
		}
	}

	private static boolean isLast(ArchiveSession session, SavePoint made) {
		try (History history = session.open().history()) {
			return history.last().id().equals(made.id()) && history.compareWithSaved(made).isEmpty();
		} catch (IOException e) {
			return false; // then it is asked
		}
	}
}
