package org.cairnfield.ui.internal.draft;

import java.util.List;

import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Offers what earlier sessions left unsaved: in a dialog when the archive opens, then by a notice as long as any is left. */
public final class Recovery {

	private static final String NOTICE = "recovery";

	private static ArchiveSession due;

	private Recovery() {
	}

	/** An archive was opened. Where the window is not there yet, {@link #offerWhatIsDue} makes the offer. */
	public static void opened(ArchiveSession session) {
		due = session;
		if (PlatformUI.isWorkbenchRunning() && PlatformUI.getWorkbench().getWorkbenchWindowCount() > 0
				&& PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell().isVisible()) {
			offerWhatIsDue();
		}
	}

	/** The window is there: makes the offer that could not be made before. */
	public static void offerWhatIsDue() {
		ArchiveSession session = due;
		due = null;
		if (session != null) {
			tellAndOffer(session, true);
		}
	}

	private static void tellAndOffer(ArchiveSession session, boolean ask) {
		List<DraftOffer> offers = DraftOffer.of(session);
		if (offers.isEmpty()) {
			Notices.workbench().remove(NOTICE);
			return;
		}
		String which = offers.size() == 1 ? "Unsaved work of " + offers.get(0).who() + " from " + offers.get(0).when() + " is"
				: offers.size() + " pieces of unsaved work are";
		Notices.workbench().say(new Notice(NOTICE, Notice.Kind.WARNING, which + " kept for later.",
				List.of(new Notice.Action("Bring back or delete …", Recovery::offerAgain))));
		if (ask) {
			IWorkbenchWindow window = PlatformUI.getWorkbench().getWorkbenchWindows()[0];
			new RecoveryDialog(window.getShell(), session, offers).open();
			if (Sessions.workbench().present().filter(now -> now == session).isPresent()) {
				tellAndOffer(session, false);
			}
		}
	}

	private static void offerAgain() {
		Sessions.workbench().backToPresent();
		Sessions.workbench().present().ifPresent(session -> tellAndOffer(session, true));
	}

	/** The archive is no longer on show. */
	public static void left() {
		due = null;
	}
}
