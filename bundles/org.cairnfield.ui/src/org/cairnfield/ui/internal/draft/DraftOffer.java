package org.cairnfield.ui.internal.draft;

import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.Draft;
import org.cairnfield.archive.DraftChange;
import org.cairnfield.model.edit.ChangeCommand;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;

/** What an earlier session of an archive has left unsaved, and what can be done about it. */
public final class DraftOffer {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneId.systemDefault());

	private final ArchiveSession session;
	private final Draft draft;

	private DraftOffer(ArchiveSession session, Draft draft) {
		this.session = session;
		this.draft = draft;
	}

	/** The newest draft of the archive that is not saved already; those that are go without a word. */
	public static Optional<DraftOffer> of(ArchiveSession session) {
		if (session.readOnlyReason().isPresent() || session.isModified()) {
			return Optional.empty();
		}
		try {
			List<Draft> drafts = session.open().drafts(Drafts.folder());
			for (Draft draft : drafts) {
				if (draft.fit() != Draft.Fit.SAVED) {
					return Optional.of(new DraftOffer(session, draft));
				}
				session.open().discardDraft(draft);
			}
		} catch (IOException e) {
			Problems.log("Drafts could not be read", e);
		}
		return Optional.empty();
	}

	/** Says what there is. */
	public String text() {
		String when = "Changes of " + TIME.format(draft.written()) + " were not saved when the workbench last ended";
		return canBringBack() ? when + "." : when + ", and cannot be brought back: " + draft.reason() + ".";
	}

	/** Whether the changes fit the archive as it is now. */
	public boolean canBringBack() {
		return draft.fit() == Draft.Fit.FITS;
	}

	/** Makes the changes again; they can be undone, and are not saved yet. */
	public void bringBack() {
		try {
			DraftChange change = session.open().draftChange(draft);
			session.run(new ChangeCommand("Bring back what was not saved", change::apply, change::undo, change.affected()));
		} catch (IOException e) {
			Problems.show("The changes could not be brought back", e);
		}
	}

	/** Deletes the draft, at the person's word. */
	public void discard() {
		try {
			session.open().discardDraft(draft);
		} catch (IOException e) {
			Problems.show("The draft could not be deleted", e);
		}
	}
}
