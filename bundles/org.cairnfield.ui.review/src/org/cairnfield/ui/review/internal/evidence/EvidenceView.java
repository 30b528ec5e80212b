package org.cairnfield.ui.review.internal.evidence;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.ReviewKeys;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What speaks for and against the proposal in hand. */
public final class EvidenceView extends ViewPart {

	private EvidencePane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new EvidencePane(parent, ReviewDesk.workbench(), new ReviewKeys(getSite()));
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}
}
