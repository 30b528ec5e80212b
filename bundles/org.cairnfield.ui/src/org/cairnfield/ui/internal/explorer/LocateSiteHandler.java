package org.cairnfield.ui.internal.explorer;

import org.cairnfield.model.Site;
import org.cairnfield.model.edit.LocateSiteCommand;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Asks where on Earth the site of what is selected in the explorer lies, which exports in WGS 84 need. */
public final class LocateSiteHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Shell shell = DialogParent.shell();
		Sessions.workbench().current()
				.ifPresent(session -> SelectedSite.of(session).ifPresentOrElse(site -> ask(shell, session, site),
						() -> MessageDialog.openInformation(shell, Messages.LocateSiteHandler_placeOnEarth,
								Messages.LocateSiteHandler_selectASiteInThe)));
		return null;
	}

	private static void ask(Shell shell, ArchiveSession session, Site site) {
		InputDialog dialog = new InputDialog(shell,
				NLS.bind(Messages.LocateSiteHandler_placeOnEarthOf, ModelText.name(site)),
				Messages.LocateSiteHandler_latitudeAndLongitudeOfThe,
				site.getGeoreference() == null ? "" : site.getGeoreference().toString(), LocateSiteHandler::problem);
		if (dialog.open() == Window.OK) {
			session.run(new LocateSiteCommand(site, parse(dialog.getValue())));
		}
	}

	private static Georeference parse(String text) {
		return text.isBlank() ? null : Georeference.parse(text.strip());
	}

	private static String problem(String text) {
		try {
			parse(text);
			return null;
		} catch (IllegalArgumentException e) {
			return NLS.bind(Messages.LocateSiteHandler_threeNumbersAreWantedSuch, e.getMessage());
		}
	}
}
