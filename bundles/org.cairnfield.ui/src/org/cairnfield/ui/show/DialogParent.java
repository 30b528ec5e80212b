package org.cairnfield.ui.show;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/**
 * The window that dialogs belong to. The platform's own answer, the active shell, is none for a moment after another dialog was
 * closed, and while another program has the focus; a dialog without a parent does not hear Escape and does not stay on top.
 */
public final class DialogParent {

	private DialogParent() {
	}

	/** The window of the workbench; there must be one. */
	public static Shell shell() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
	}
}
