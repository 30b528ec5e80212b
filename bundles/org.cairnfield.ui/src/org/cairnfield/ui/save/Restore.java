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
		Restore restore = new Restore(session, "Restore " + what);
		if (!session.open().damages().isEmpty()) {
			restore.ask(shell, "The archive becomes what it was at " + what + ". Damaged files are kept in the folder .cairnfield/damaged.",
					"&Restore", "Restored " + what, (archive, person) -> archive.restore(point, person, null));
			return;
		}
		ArchiveDiff[] since = new ArchiveDiff[1];
		if (Saving.whileBusy("Comparing", () -> {
			try (History history = session.open().history()) {
				since[0] = history.compareWithSaved(point);
			}
		})) {
			String changes = since[0].isEmpty() ? "What is saved is like that already." : "This undoes what was changed since: "
					+ counts(since[0]) + ".";
			restore.ask(shell, "The archive becomes what it was at " + what + ". " + changes + " Releases stay as they are.", "&Restore",
					"Restored " + what, (archive, person) -> archive.restore(point, person, null));
		}
	}

	/** Takes back what one save point changed, likewise. */
	public static void change(Shell shell, ArchiveSession session, SavePoint point) {
		new Restore(session, "Revert " + point.shortId()).ask(shell, "What save point " + point.shortId() + " changed is reverted: "
				+ point.summary() + ". What was changed since stays.", "&Revert", "Reverted " + point.shortId(),
				(archive, person) -> Optional.of(archive.undo(point, person, null)));
	}

	private static String counts(ArchiveDiff diff) {
		List<String> lines = new ArrayList<>(diff.summary());
		int more = lines.size() - MOST_COUNTS;
		return more <= 0 ? String.join(", ", lines) : String.join(", ", lines.subList(0, MOST_COUNTS)) + " and " + more + " more";
	}

	private void ask(Shell shell, String consequence, String button, String done, Change change) {
		boolean unsaved = session.isModified();
		String question = consequence + "\n\nA new save point records it; nothing of the history is lost."
				+ (unsaved ? "\n\nThere are unsaved changes. They are saved first, as a save point of their own." : "");
		if (MessageDialog.open(MessageDialog.QUESTION, shell, what, question, 0, unsaved ? "&Save and go on" : button, "Cancel") == 0) {
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
		Notices.workbench().say(made[0] == null ? new Notice(NOTICE, Notice.Kind.INFORMATION, "The archive is like that already.",
				List.of(dismiss()))
				: new Notice(NOTICE, Notice.Kind.INFORMATION, done + " as save point " + made[0].shortId() + ".",
						List.of(new Notice.Action("Undo", () -> goBack(made[0])), dismiss())));
	}

	private static Notice.Action dismiss() {
		return new Notice.Action("Dismiss", () -> Notices.workbench().remove(NOTICE));
	}

	/** To the state right before a save point; asks only where there is something to be lost sight of. */
	private void goBack(SavePoint made) {
		Optional<ArchiveSession> present = Sessions.workbench().present().filter(now -> now.open() == session.open());
		if (present.isEmpty()) {
			return;
		}
		Sessions.workbench().backToPresent();
		Restore back = new Restore(present.get(), "Undo: " + what);
		String before = made.parents().get(0);
		Change change = (archive, person) -> {
			try (History history = archive.history()) {
				return archive.restore(history.find(before), person, null);
			}
		};
		boolean untouched = !present.get().isModified() && isLast(present.get(), made);
		if (untouched) {
			back.make("The previous state is back", change);
		} else {
			back.ask(null, "The archive becomes what it was at save point " + before.substring(0, 8)
					+ ". This undoes what was changed since.", "&Restore", "The previous state is back", change);
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
