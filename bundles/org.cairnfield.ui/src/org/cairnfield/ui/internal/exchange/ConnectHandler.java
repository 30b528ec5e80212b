package org.cairnfield.ui.internal.exchange;

import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Connects the archive to a remote. */
public final class ConnectHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().ifPresent(session -> new ConnectDialog(HandlerUtil.getActiveShell(event), session).open());
		return null;
	}
}
