package org.cairnfield.ui.internal.commands;

import java.util.List;

import org.cairnfield.ui.internal.intake.IntakeWizard;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Takes survey files in. */
public final class TakeInHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IntakeWizard.open(HandlerUtil.getActiveShell(event), List.of());
		return null;
	}
}
