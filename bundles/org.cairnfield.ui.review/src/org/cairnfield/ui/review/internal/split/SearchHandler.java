package org.cairnfield.ui.review.internal.split;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Sets by hand how the split under review is searched. */
public final class SearchHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		SearchDialog.open(DialogParent.shell(), ReviewDesk.workbench());
		return null;
	}
}
