package org.cairnfield.ui.plan.internal.view;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** The commands of the plan; which one a handler is for stands after the class name in plugin.xml. */
public final class PlanHandler extends AbstractHandler implements IExecutableExtension {

	private static final double STEP = 1.4;
	private static final Map<String, Consumer<PlanPane>> COMMANDS = Map.ofEntries(
			entry("fit", pane -> pane.plan().look().fit()),
			entry("fitSelection", pane -> pane.plan().look().fitSelection()),
			entry("zoomIn", pane -> pane.plan().look().zoom(STEP)),
			entry("zoomOut", pane -> pane.plan().look().zoom(1 / STEP)), entry("placeImage", PlanPane::placeImage),
			entry("editOutline", PlanPane::editOutline), entry("outlineFromSamples", PlanPane::outlineFromSamples),
			entry("setPlace", MountCommands::set), entry("forgetPlace", MountCommands::forget),
			entry("errorMap", PlanPane::turnErrorMap),
			entry("picture", pane -> PlanPrint.save(pane, pane.plan().canvas().getShell())),
			entry("copy", pane -> PlanPrint.copy(pane, pane.plan().canvas().getShell())),
			entry("print", pane -> PlanPrint.print(pane, pane.plan().canvas().getShell())));

	/** They go on by mouse and keys, so the plan is brought up. */
	private static final Set<String> TOOLS = Set.of("editOutline", "outlineFromSamples", "setPlace");

	private Consumer<PlanPane> command;
	private boolean isTool;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		command = COMMANDS.get(data);
		isTool = TOOLS.contains(data);
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			if (isTool) {
				HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(PlanView.ID);
			}
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
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
