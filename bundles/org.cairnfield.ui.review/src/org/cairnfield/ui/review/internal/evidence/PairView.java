package org.cairnfield.ui.review.internal.evidence;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.ReviewKeys;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The sample in hand and its carrier, side by side. */
public final class PairView extends ViewPart {

	private PairPane pane;

	@Override
	public void createPartControl(Composite parent) {
		new ReviewKeys(getSite());
		pane = new PairPane(parent, ReviewDesk.workbench());
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}
}
