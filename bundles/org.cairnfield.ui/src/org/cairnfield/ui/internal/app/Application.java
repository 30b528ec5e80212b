package org.cairnfield.ui.internal.app;

import org.cairnfield.curation.run.Threads;
import org.cairnfield.ui.internal.open.Leaving;
import org.cairnfield.ui.internal.open.Opening;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** The workbench as a program. */
public final class Application implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		Display display = PlatformUI.createDisplay();
		if (!Workspace.take(display)) {
			display.dispose();
			return EXIT_OK;
		}
		display.addListener(SWT.Close, event -> Leaving.endOfSession()); // of the desktop; heard before the workbench
		Threads.atEnd("cairnfield-end", () -> Leaving.keepBeforeTheEnd(display));
		try {
			String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
			// read beside the making of the window, which takes as long
			boolean opens = Opening.atStart(StartArguments.parse(arguments).archive());
			int code = PlatformUI.createAndRunWorkbench(display, new Advisor(opens));
			return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	@Override
	public void stop() {
		Leaving.endOfSession();
		if (PlatformUI.isWorkbenchRunning()) {
			PlatformUI.getWorkbench().getDisplay().syncExec(() -> PlatformUI.getWorkbench().close());
		}
	}
}
