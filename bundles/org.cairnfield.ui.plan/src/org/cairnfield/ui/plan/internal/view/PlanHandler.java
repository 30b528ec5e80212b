package org.cairnfield.ui.plan.internal.view;

import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;

/** The commands of the plan; which one a handler is for stands after the class name in plugin.xml. */
public final class PlanHandler extends AbstractHandler implements IExecutableExtension {

	private static final double STEP = 1.4;
	private static final Map<String, Consumer<PlanPane>> COMMANDS = Map.of("fit", pane -> pane.plan().look().fit(), "fitSelection",
			pane -> pane.plan().look().fitSelection(), "zoomIn", pane -> pane.plan().look().zoom(STEP), "zoomOut",
			pane -> pane.plan().look().zoom(1 / STEP), "placeImage", PlanPane::placeImage, "errorMap", PlanPane::turnErrorMap, "picture",
			pane -> PlanPrint.save(pane, pane.plan().canvas().getShell()), "copy", pane -> PlanPrint.copy(pane, pane.plan().canvas().getShell()), "print",
			pane -> PlanPrint.print(pane, pane.plan().canvas().getShell()));

	private Consumer<PlanPane> command;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		command = COMMANDS.get(data);
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		if (command != null && plan(event) instanceof PlanView view) {
			command.accept(view.pane());
		}
		return null;
	}

	/** The active plan, or the one of the window. */
	static IWorkbenchPart plan(ExecutionEvent event) {
		IWorkbenchPart active = HandlerUtil.getActivePart(event);
		return active instanceof PlanView ? active
				: HandlerUtil.getActiveWorkbenchWindow(event).getActivePage().findView(PlanView.ID);
	}
}
