package org.cairnfield.ui.review.internal.split;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Sets by hand how the split under review is searched. */
public final class SearchHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		SearchDialog.open(HandlerUtil.getActiveShell(event), ReviewDesk.workbench());
		return null;
	}
}
