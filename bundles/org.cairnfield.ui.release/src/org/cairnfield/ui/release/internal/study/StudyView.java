package org.cairnfield.ui.release.internal.study;

import org.cairnfield.ui.session.Sessions;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** Which way should maps be split: all ways side by side, with one budget. */
public final class StudyView extends ViewPart {

	private StudyPane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new StudyPane(parent);
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
