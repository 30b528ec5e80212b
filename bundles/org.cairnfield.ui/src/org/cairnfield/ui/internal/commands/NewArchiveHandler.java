package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.internal.start.ChooseArchive;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Makes an empty archive. */
public final class NewArchiveHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		ChooseArchive.create(HandlerUtil.getActiveShell(event));
		return null;
	}
}
