package org.cairnfield.ui.review.internal.desk;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** Asks the plan, where the workbench has one, to show what is selected. */
final class PlanZoom {

	private static final String VIEW = "org.cairnfield.ui.plan.view";
	private static final String COMMAND = "org.cairnfield.ui.plan.fitSelection";

	private PlanZoom() {
	}

	static void toSelection() {
		if (!PlatformUI.isWorkbenchRunning()) {
			return;
		}
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		if (window == null || window.getActivePage() == null || window.getActivePage().findView(VIEW) == null) {
			return;
		}
		Command command = window.getService(ICommandService.class).getCommand(COMMAND);
		if (command.isDefined() && command.isHandled()) {
			try {
				window.getService(IHandlerService.class).executeCommand(COMMAND, null);
			} catch (CommandException e) {
				// the plan shows the selection without zooming
			}
		}
	}
}
