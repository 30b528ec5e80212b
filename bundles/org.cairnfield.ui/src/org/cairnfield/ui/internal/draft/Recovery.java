package org.cairnfield.ui.internal.draft;

import java.util.List;

import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.osgi.util.NLS;

/** Offers what earlier sessions left unsaved: in a dialog when the archive opens, then by a notice as long as any is left. */
public final class Recovery {

	private static final String NOTICE = "recovery";

	private Recovery() {
	}

	/** Looks for drafts beside the user interface: whether one fits takes a look into all files of an archive, which is remembered. */
	public static ArchiveSession look(ArchiveSession opened) {
		DraftOffer.of(opened);
		return opened;
	}

	/** Makes the offer, where the archive is still on show and there is anything to offer. */
	public static void offer(ArchiveSession session) {
		if (isPresent(session)) {
			List<DraftOffer> offers = DraftOffer.of(session);
			if (!offers.isEmpty()) {
				new RecoveryDialog(DialogParent.shell(), session, offers).open();
			}
			if (isPresent(session)) {
				tell(DraftOffer.of(session));
			}
		}
	}

	private static boolean isPresent(ArchiveSession session) {
		return Sessions.workbench().present().filter(now -> now == session).isPresent();
	}

	private static void tell(List<DraftOffer> left) {
		if (left.isEmpty()) {
			Notices.workbench().remove(NOTICE);
			return;
		}
		String which = left.size() == 1
				? NLS.bind(Messages.Recovery_unsavedWorkOfFromIs, left.get(0).who(), left.get(0).when())
				: NLS.bind(Messages.Recovery_piecesOfUnsavedWorkAre, left.size());
		Notices.workbench().say(new Notice(NOTICE, Notice.Kind.WARNING, NLS.bind(Messages.Recovery_keptForLater, which),
				List.of(new Notice.Action(Messages.Recovery_bringBackOrDelete, Recovery::offerAgain))));
	}

	private static void offerAgain() {
		Sessions.workbench().backToPresent();
		Sessions.workbench().present().ifPresent(Recovery::offer);
	}
}
