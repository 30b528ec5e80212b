package org.cairnfield.ui.tests.story;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** Fails when it is opened: what looks for faults has to find it. */
public final class FaultyView extends ViewPart {

	static final String ID = "org.cairnfield.ui.tests.faulty";

	@Override
	public void createPartControl(Composite parent) {
		throw new IllegalStateException("planted");
	}

	@Override
	public void setFocus() {
		// there is nothing
	}
}
