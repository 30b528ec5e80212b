package org.cairnfield.ui.review.internal.split;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** Tries out splits of the map, and keeps them. */
public final class SplitView extends ViewPart {

	private SplitPane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new SplitPane(parent, ReviewDesk.workbench());
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}
}
