package org.cairnfield.ui.internal.floors;

import org.cairnfield.model.Site;
import org.cairnfield.ui.internal.explorer.SelectedSite;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Takes floor plans in, for the site of what is selected unless another one is chosen. */
public final class TakeFloorsHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Shell shell = DialogParent.shell();
		Sessions.workbench().current().ifPresent(session -> open(shell, session));
		return null;
	}

	private static void open(Shell shell, ArchiveSession session) {
		if (session.archive().getSites().isEmpty()) {
			MessageDialog.openInformation(shell, Messages.TakeFloorsHandler_takeInFloorPlans,
					Messages.TakeFloorsHandler_floorsBelongToASite);
			return;
		}
		Site site = SelectedSite.of(session).orElse(session.archive().getSites().get(0));
		new FloorsDialog(shell, session, site).open();
	}
}
