package org.cairnfield.ui.internal.exchange;

import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Connects the archive to a remote. */
public final class ConnectHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().ifPresent(session -> new ConnectDialog(DialogParent.shell(), session).open());
		return null;
	}
}
