package org.cairnfield.ui.internal.commands;

import java.util.List;

import org.cairnfield.ui.internal.intake.IntakeWizard;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Takes survey files in. */
public final class TakeInHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IntakeWizard.open(DialogParent.shell(), List.of());
		return null;
	}
}
