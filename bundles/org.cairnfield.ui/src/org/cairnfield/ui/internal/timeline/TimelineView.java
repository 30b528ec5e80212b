package org.cairnfield.ui.internal.timeline;

import org.cairnfield.ui.session.Sessions;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** How the map of a site has aged, why, and what helps. */
public final class TimelineView extends ViewPart {

	private TimelinePane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new TimelinePane(parent);
		Sessions.workbench().add(pane);
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(pane);
		pane.dispose();
		super.dispose();
	}
}
