package org.cairnfield.ui.internal.exchange;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Copies an archive from a remote and opens it. */
public final class CopyHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		RemoteCopy.ask(HandlerUtil.getActiveShell(event));
		return null;
	}
}
