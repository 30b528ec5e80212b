package org.cairnfield.ui.review.internal.team;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Opens the list of who is to review which proposals of the split under review. */
public final class AssignHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		ReviewDesk desk = ReviewDesk.workbench();
		if (desk.split() == null || desk.review().standings().all() == null) {
			desk.review().refuse(Messages.AssignHandler_thereIsNoSplitWhose);
		} else {
			new AssignmentsDialog(DialogParent.shell(), desk).open();
		}
		return null;
	}
}
