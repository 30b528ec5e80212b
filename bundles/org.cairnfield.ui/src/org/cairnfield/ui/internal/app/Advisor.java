package org.cairnfield.ui.internal.app;

import org.cairnfield.ui.internal.conflicts.ConflictNotices;
import org.cairnfield.ui.internal.rules.RuleNotices;
import org.cairnfield.ui.internal.draft.DraftKeeper;
import org.cairnfield.ui.internal.notice.StateNotices;
import org.cairnfield.ui.internal.open.DiskWatch;
import org.cairnfield.ui.internal.open.Leaving;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.internal.open.WindowReady;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPreferenceConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Says how the workbench of the platform is to be. */
final class Advisor extends WorkbenchAdvisor {

	private static final int TICK_MILLIS = 200;

	private final boolean opens;

	/** @param opens whether an archive is on its way */
	Advisor(boolean opens) {
		this.opens = opens;
	}

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		configurer.setSaveAndRestore(true);
		IPreferenceStore store = PlatformUI.getPreferenceStore();
		store.setDefault(IWorkbenchPreferenceConstants.SHOW_PROGRESS_ON_STARTUP, false);
		store.setDefault(IWorkbenchPreferenceConstants.SHOW_TEXT_ON_PERSPECTIVE_BAR, true);
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		return new WindowAdvisor(configurer);
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return CuratePerspective.ID;
	}

	/**
	 * The platform waits here for a thread that wakes it up at its end. GTK's event loop forgets a call to wake up that comes
	 * just before it goes to sleep, and nothing else may come then; so it is made to look again now and then.
	 */
	@Override
	public boolean openWindows() {
		Display display = PlatformUI.getWorkbench().getDisplay();
		Runnable tick = new Runnable() {
			@Override
			public void run() {
				display.timerExec(TICK_MILLIS, this);
			}
		};
		display.timerExec(TICK_MILLIS, tick);
		try {
			return super.openWindows();
		} finally {
			display.timerExec(-1, tick);
		}
	}

	@Override
	public void postStartup() {
		new DraftKeeper();
		new StateNotices();
		new ConflictNotices();
		new RuleNotices();
		new DiskWatch();
		PlatformUI.getWorkbench().getDisplay().asyncExec(WindowReady::opened);
		if (!opens) {
			Opening.showStartPage();
		}
	}

	/** Comes once for every end that the platform knows: the menu, the window's button, a restart. */
	@Override
	public boolean preShutdown() {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		return Leaving.mayLeave(window == null ? null : window.getShell());
	}

	@Override
	public void postShutdown() {
		Leaving.leaveAtEnd();
	}
}
