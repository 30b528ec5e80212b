package org.cairnfield.ui.internal.open;

import java.util.List;

import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.ui.IWindowListener;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * Looks whenever the window comes to the front whether another program has changed an archive that is open read-only here.
 * One that is open for editing is locked, so nobody else changes it.
 */
public final class DiskWatch implements SessionListener, IWindowListener {

	private static final String NOTICE = "disk";

	private ArchiveSession session;

	public DiskWatch() {
		Sessions.workbench().add(this);
		PlatformUI.getWorkbench().addWindowListener(this);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		Notices.workbench().remove(NOTICE);
	}

	@Override
	public void windowActivated(IWorkbenchWindow window) {
		ArchiveSession of = session;
		if (of != null && of.past().isEmpty() && of.readOnlyReason().isPresent()) {
			Work.start("Checking whether the archive was changed", workers -> of.open().isOutdated(), outdated -> {
				if (outdated && of == session) {
					Notices.workbench().say(new Notice(NOTICE, Notice.Kind.WARNING, "Another program has changed the archive since it was read.",
							List.of(new Notice.Action("Read it again", () -> Opening.open(of.folder())))));
				}
			}, problem -> Problems.log("The archive could not be checked for changes", problem));
		}
	}

	@Override
	public void windowDeactivated(IWorkbenchWindow window) {
		// nothing to look for
	}

	@Override
	public void windowClosed(IWorkbenchWindow window) {
		// nothing to look for
	}

	@Override
	public void windowOpened(IWorkbenchWindow window) {
		// nothing to look for
	}
}
