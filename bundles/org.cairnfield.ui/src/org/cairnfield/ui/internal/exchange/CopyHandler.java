package org.cairnfield.ui.internal.exchange;

import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Copies an archive from a remote and opens it. */
public final class CopyHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		RemoteCopy.ask(DialogParent.shell());
		return null;
	}
}
