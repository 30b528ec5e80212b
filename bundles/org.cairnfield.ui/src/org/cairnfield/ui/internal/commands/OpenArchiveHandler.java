package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.internal.start.ChooseArchive;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Opens an archive that the person chooses. */
public final class OpenArchiveHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		ChooseArchive.open(DialogParent.shell());
		return null;
	}
}
