package org.cairnfield.ui.review.internal.policy;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;

/** Opens the review policy of the archive on show. */
public final class PolicyHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		ReviewDesk desk = ReviewDesk.workbench();
		String readOnly = desk.session() == null ? Messages.PolicyHandler_noArchiveIsOpen
				: desk.session().readOnlyReason().orElse(null);
		if (readOnly != null) {
			desk.review().refuse(NLS.bind(Messages.PolicyHandler_theReviewPolicyCannotBe, readOnly));
		} else {
			new PolicyDialog(DialogParent.shell(), desk).open();
		}
		return null;
	}
}
