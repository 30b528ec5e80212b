package org.cairnfield.ui.show;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Shows a view and pushes one of its buttons, so that a key, a menu or a search of commands does what the button does. Given as
 * {@code …PushHandler:VIEW/BUTTON}. Where the button is greyed, the status line says so.
 */
public final class PushHandler extends AbstractHandler implements IExecutableExtension {

	private String view;
	private String button;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		String[] given = ((String) data).split("/", 2);
		view = given[0];
		button = given[1];
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		try {
			IViewPart shown = page.showView(view);
			Button found = find(HandlerUtil.getActiveShellChecked(event));
			if (found == null) {
				throw new ExecutionException(NLS.bind(Messages.PushHandler_theViewHasNoButton, view, button));
			}
			boolean can = found.isEnabled();
			shown.getViewSite().getActionBars().getStatusLineManager().setMessage(can ? null : greyed(found));
			if (can) {
				found.notifyListeners(SWT.Selection, new Event());
			}
			return null;
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
	}

	private static String greyed(Button button) {
		String why = button.getToolTipText();
		return NLS.bind(Messages.PushHandler_cannotBeDoneNow, button.getText().replace("&", ""),
				why == null || why.isEmpty() ? "" : ": " + why);
	}

	private Button find(Control control) {
		if (control instanceof Button found && button.equals(found.getData(Marked.ID))) {
			return found;
		}
		if (control instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				Button found = find(child);
				if (found != null) {
					return found;
				}
			}
		}
		return null;
	}
}
