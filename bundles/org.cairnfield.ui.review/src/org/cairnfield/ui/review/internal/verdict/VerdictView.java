package org.cairnfield.ui.review.internal.verdict;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.ReviewKeys;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** Decides on the sample in hand. */
public final class VerdictView extends ViewPart {

	private VerdictPane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new VerdictPane(parent, ReviewDesk.workbench(), new ReviewKeys(getSite()),
				() -> getSite().getPage().activate(this));
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}
}
