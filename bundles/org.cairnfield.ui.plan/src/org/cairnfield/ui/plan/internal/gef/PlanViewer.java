package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.gef.ui.parts.GraphicalViewerImpl;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** GEF's viewer on a canvas that the platform buffers: GEF's own buffer is blurred at 200 % and slower. */
final class PlanViewer extends GraphicalViewerImpl {

	@Override
	public Control createControl(Composite parent) {
		setControl(new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND));
		return getControl();
	}

	@Override
	protected void createDefaultRoot() {
		// the plan brings its own; the one of GEF formats its zoom with a library that is not there
	}

	Canvas canvas() {
		return (Canvas) getControl();
	}
}
