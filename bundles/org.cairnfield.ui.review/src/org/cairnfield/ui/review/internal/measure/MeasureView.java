package org.cairnfield.ui.review.internal.measure;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What the split under review does to positions and cost. */
public final class MeasureView extends ViewPart {

	private MeasurePane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new MeasurePane(parent, ReviewDesk.workbench());
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}
}
