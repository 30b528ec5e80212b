package org.cairnfield.ui.internal.explorer;

import org.cairnfield.model.Site;
import org.cairnfield.model.edit.SiteOrder;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.dialogs.MessageDialog;

/** Shows the site that is selected in the explorer further up or down; which way stands after the class name in plugin.xml. */
public final class MoveSiteHandler extends AbstractHandler implements IExecutableExtension {

	private int by;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		by = "up".equals(data) ? -1 : 1;
	}

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().ifPresent(session -> {
			if (session.selection().scope() instanceof Site site) {
				session.run(SiteOrder.move(site, by));
			} else {
				MessageDialog.openInformation(DialogParent.shell(), Messages.MoveSiteHandler_orderOfSites,
						Messages.MoveSiteHandler_selectASiteInThe);
			}
		});
		return null;
	}
}
