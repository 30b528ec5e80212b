package org.cairnfield.ui.review.internal.queue;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.ReviewKeys;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The noise of a split, one line a sample, to be decided. */
public final class QueueView extends ViewPart {

	private QueuePane pane;

	@Override
	public void createPartControl(Composite parent) {
		ReviewKeys keys = new ReviewKeys(getSite());
		pane = new QueuePane(parent, ReviewDesk.workbench(), keys);
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}
}
