package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.internal.start.ChooseArchive;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens an archive that the person chooses. */
public final class OpenArchiveHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		ChooseArchive.open(HandlerUtil.getActiveShell(event));
		return null;
	}
}
