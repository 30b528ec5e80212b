package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Writes what was changed to disk. */
public final class SaveHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().ifPresent(Saving::save);
		return null;
	}
}
