package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.internal.start.ChooseArchive;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Makes an empty archive. */
public final class NewArchiveHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		ChooseArchive.create(DialogParent.shell());
		return null;
	}
}
