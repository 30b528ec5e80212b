package org.cairnfield.ui.internal.draft;

import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;

import org.cairnfield.archive.Draft;
import org.cairnfield.archive.DraftChange;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.edit.ChangeCommand;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;

/** What an earlier session of an archive has left unsaved, and what can be done about it. */
final class DraftOffer {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss").withZone(ZoneId.systemDefault());

	private final ArchiveSession session;
	private final Draft draft;

	private DraftOffer(ArchiveSession session, Draft draft) {
		this.session = session;
		this.draft = draft;
	}

	/** All of an archive, the newest first; none of a past state. */
	static List<DraftOffer> of(ArchiveSession session) {
		if (session.past().isPresent()) {
			return List.of();
		}
		try {
			return session.open().drafts().pending(DraftKeeper.folder()).stream().map(draft -> new DraftOffer(session, draft)).toList();
		} catch (IOException e) {
			Problems.log("Drafts could not be read", e);
			return List.of();
		}
	}

	/** When it was written, to the second, which tells it from others. */
	String when() {
		return TIME.format(draft.written());
	}

	/** Who made the changes. */
	String who() {
		return !draft.person().isEmpty() ? draft.person() : draft.by().map(by -> by.user()).orElse("not known");
	}

	/** What was changed, in counts. */
	String what() {
		if (draft.fit() == Draft.Fit.FITS) {
			try {
				return String.join(", ", session.open().drafts().difference(draft).summary());
			} catch (IOException e) {
				return e.getMessage();
			}
		}
		return draft.paths().isEmpty() ? "not known" : draft.paths().size() + (draft.paths().size() == 1 ? " file" : " files");
	}

	/** Why it cannot be brought back just now, and what to do; empty if it can. */
	String obstacle() {
		if (session.readOnlyReason().isPresent()) {
			return "It can be brought back once the archive can be changed.";
		} else if (session.isModified()) {
			return "Save or undo your own changes first, then it can be brought back.";
		}
		return switch (draft.fit()) {
		case FITS, SAVED -> "";
		case OTHER_STATE -> "It cannot be brought back, as " + draft.reason()
				+ ". Restore the save point that it was based on, and it can.";
		case DAMAGED -> "It cannot be brought back: " + draft.reason() + ".";
		};
	}

	/** Makes the changes again, to be undone or saved; those of somebody else become a save point under that name. */
	boolean bringBack() {
		try {
			DraftChange change = session.open().drafts().change(draft);
			session.run(new ChangeCommand("Bring back unsaved work", change::apply, change::undo, change.affected()));
		} catch (IOException e) {
			Problems.show("The changes could not be brought back", e);
			return false;
		}
		Person person = Preferences.person();
		if (isOfAnother() && Saving.whileBusy("Recording what " + draft.person() + " did", () -> session.open()
				.savePointFor(Person.named(draft.person()), "Brought back by " + person.name()))) {
			session.saved();
		}
		return true;
	}

	/** Whether the changes are somebody else's than who sits at the workbench. */
	boolean isOfAnother() {
		return !draft.person().isEmpty() && !draft.person().equals(Preferences.person().name());
	}

	/** Deletes the draft, at the person's word. */
	boolean discard() {
		try {
			session.open().drafts().discard(draft);
			return true;
		} catch (IOException e) {
			Problems.show("The draft could not be deleted", e);
			return false;
		}
	}
}
