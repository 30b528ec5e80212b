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
			Work.start(Messages.DiskWatch_checkingWhetherTheArchiveWas, workers -> of.open().isOutdated(), outdated -> {
				if (outdated && of == session) {
					Notices.workbench()
							.say(new Notice(NOTICE, Notice.Kind.WARNING, Messages.DiskWatch_anotherProgramHasChangedThe,
									List.of(new Notice.Action(Messages.DiskWatch_readItAgain,
											() -> Opening.open(of.folder())))));
				}
			}, problem -> Problems.log(Messages.DiskWatch_theArchiveCouldNotBe, problem));
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
