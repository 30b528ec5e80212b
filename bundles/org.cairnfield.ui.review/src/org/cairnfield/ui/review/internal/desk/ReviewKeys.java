package org.cairnfield.ui.review.internal.desk;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;

/** The keys of the reviewer while a view has the focus, except in fields that people type into. */
public final class ReviewKeys implements TypingGuard {

	/** Of plugin.xml. */
	public static final String CONTEXT = "org.cairnfield.ui.review.context";

	private final IContextService contexts;
	private IContextActivation active;

	/** @param site of the view; its service lets the keys live while the view is active */
	public ReviewKeys(IWorkbenchPartSite site) {
		contexts = site.getService(IContextService.class);
		active = contexts.activateContext(CONTEXT);
	}

	@Override
	public void guard(Control field) {
		field.addListener(SWT.FocusIn, event -> {
			if (active != null) {
				contexts.deactivateContext(active);
				active = null;
			}
		});
		field.addListener(SWT.FocusOut, event -> {
			if (active == null && !field.getShell().isDisposed()) {
				active = contexts.activateContext(CONTEXT);
			}
		});
	}
}
