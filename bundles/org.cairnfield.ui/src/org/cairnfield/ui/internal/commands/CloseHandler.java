package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.internal.open.Opening;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Closes the archive, unless there is unsaved work that the person wants to keep. */
public final class CloseHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Opening.closeCurrent();
		return null;
	}
}
