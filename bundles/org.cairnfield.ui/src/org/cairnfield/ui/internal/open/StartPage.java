package org.cairnfield.ui.internal.open;

import org.cairnfield.ui.internal.app.ViewIds;
import org.cairnfield.ui.problem.Problems;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** Brings the start page up and takes it away. */
final class StartPage {

	private StartPage() {
	}

	static void show() {
		IWorkbenchPage page = page();
		if (page != null) {
			try {
				page.showView(ViewIds.START);
			} catch (PartInitException e) {
				Problems.log(Messages.StartPage_theStartPageDoesNot, e);
			}
		}
	}

	static void hide() {
		IWorkbenchPage page = page();
		IViewPart view = page == null ? null : page.findView(ViewIds.START);
		if (view != null) {
			page.hideView(view);
		}
	}

	private static IWorkbenchPage page() {
		IWorkbenchWindow[] windows = PlatformUI.getWorkbench().getWorkbenchWindows();
		return windows.length == 0 ? null : windows[0].getActivePage();
	}
}
