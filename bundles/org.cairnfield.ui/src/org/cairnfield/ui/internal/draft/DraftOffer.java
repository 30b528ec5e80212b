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
import org.eclipse.osgi.util.NLS;

/** What an earlier session of an archive has left unsaved, and what can be done about it. */
final class DraftOffer {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss")
			.withZone(ZoneId.systemDefault());

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
			return session.open().drafts().pending(DraftKeeper.folder()).stream()
					.map(draft -> new DraftOffer(session, draft)).toList();
		} catch (IOException e) {
			Problems.log(Messages.DraftOffer_draftsCouldNotBeRead, e);
			return List.of();
		}
	}

	/** When it was written, to the second, which tells it from others. */
	String when() {
		return TIME.format(draft.written());
	}

	/** Who made the changes. */
	String who() {
		return !draft.person().isEmpty() ? draft.person()
				: draft.by().map(by -> by.user()).orElse(Messages.DraftOffer_notKnown);
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
		return draft.paths().isEmpty() ? Messages.DraftOffer_notKnown
				: draft.paths().size()
						+ (draft.paths().size() == 1 ? Messages.DraftOffer_file : Messages.DraftOffer_files);
	}

	/** Why it cannot be brought back just now, and what to do; empty if it can. */
	String obstacle() {
		if (session.readOnlyReason().isPresent()) {
			return Messages.DraftOffer_itCanBeBroughtBack;
		} else if (session.isModified()) {
			return Messages.DraftOffer_saveOrUndoYourOwn;
		}
		return switch (draft.fit()) {
		case FITS, SAVED -> "";
		case OTHER_STATE -> NLS.bind(Messages.DraftOffer_itCannotBeBroughtBack, draft.reason());
		case DAMAGED -> NLS.bind(Messages.DraftOffer_itCannotBeBroughtBack2, draft.reason());
		};
	}

	/** Makes the changes again, to be undone or saved; those of somebody else become a save point under that name. */
	boolean bringBack() {
		try {
			DraftChange change = session.open().drafts().change(draft);
			session.run(new ChangeCommand(Messages.DraftOffer_bringBackUnsavedWork, change::apply, change::undo,
					change.affected()));
		} catch (IOException e) {
			Problems.show(Messages.DraftOffer_theChangesCouldNotBe, e);
			return false;
		}
		Person person = Preferences.person();
		if (isOfAnother() && Saving.whileBusy(NLS.bind(Messages.DraftOffer_recordingWhatDid, draft.person()),
				() -> session.open()
						.savePointFor(Person.named(draft.person()),
								NLS.bind(Messages.DraftOffer_broughtBackBy, person.name())))) {
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
			Problems.show(Messages.DraftOffer_theDraftCouldNotBe, e);
			return false;
		}
	}
}
