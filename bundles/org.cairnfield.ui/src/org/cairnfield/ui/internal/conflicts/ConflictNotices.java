package org.cairnfield.ui.internal.conflicts;

import java.util.List;

import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.internal.app.ViewIds;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** Shows above all perspectives how many conflicts are open, until all are decided. */
public final class ConflictNotices implements SessionListener {

	private static final String NOTICE = "conflicts";

	private ArchiveSession session;
	private int said;

	public ConflictNotices() {
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		say();
	}

	@Override
	public void structureChanged() {
		if (said != open()) {
			say();
		}
	}

	private int open() {
		return session == null || session.past().isPresent() ? 0 : DecidedLater.open(session.archive()).size();
	}

	private void say() {
		said = open();
		if (said == 0) {
			Notices.workbench().remove(NOTICE);
		} else {
			Notices.workbench().say(new Notice(NOTICE, Notice.Kind.WARNING,
					NLS.bind(Messages.ConflictNotices_toDecidePeopleSetThe, Count.of(said, "conflict")),
					List.of(new Notice.Action(Messages.ConflictNotices_showTheConflicts, ConflictNotices::show))));
		}
	}

	private static void show() {
		try {
			PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(ViewIds.CONFLICTS);
		} catch (PartInitException e) {
			Problems.show(Messages.ConflictNotices_theConflictsCannotBeShown, e);
		}
	}
}
