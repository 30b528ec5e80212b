package org.cairnfield.ui.plan.internal.view;

import org.cairnfield.ui.plan.internal.gef.PlanMode;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.State;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.handlers.RadioState;
import org.eclipse.ui.services.IServiceLocator;

/** Chooses what a drag on the plan does. */
public final class ModeHandler extends AbstractHandler {

	/** Id of its command. */
	static final String COMMAND = "org.cairnfield.ui.plan.mode";

	/** The mode that the tool bar shows, for a plan that is new. */
	static PlanMode chosen(IServiceLocator services) {
		State state = services.getService(ICommandService.class).getCommand(COMMAND).getState(RadioState.STATE_ID);
		return state == null ? PlanMode.SELECT : PlanMode.valueOf(state.getValue().toString());
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		String wanted = event.getParameter(RadioState.PARAMETER_ID);
		if (wanted != null && PlanHandler.plan(event) instanceof PlanView view) {
			view.pane().mode(PlanMode.valueOf(wanted));
			if (!HandlerUtil.matchesRadioState(event)) {
				HandlerUtil.updateRadioState(event.getCommand(), wanted);
			}
		}
		return null;
	}
}
