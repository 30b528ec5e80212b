package org.cairnfield.ui.internal.app;

import org.cairnfield.ui.internal.notice.NoticeBar;
import org.cairnfield.ui.internal.tables.TableTools;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Says how the window is to be. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {

	private WindowTitle title;

	WindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
		return new ActionBars(configurer);
	}

	@Override
	public void preWindowOpen() {
		TableTools.install(getWindowConfigurer().getWindow().getWorkbench().getDisplay());
		IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
		Rectangle screen = configurer.getWindow().getWorkbench().getDisplay().getPrimaryMonitor().getClientArea();
		configurer.setInitialSize(new Point(Math.min(1500, screen.width), Math.min(950, screen.height)));
		configurer.setShowCoolBar(true);
		configurer.setShowStatusLine(true);
		configurer.setShowProgressIndicator(true);
		configurer.setShowPerspectiveBar(true);
		configurer.setTitle("Cairnfield");
	}

	@Override
	public void postWindowOpen() {
		title = new WindowTitle(getWindowConfigurer());
		NoticeBar.addTo(getWindowConfigurer().getWindow().getShell());
	}

	@Override
	public void dispose() {
		if (title != null) {
			title.dispose();
		}
	}
}
