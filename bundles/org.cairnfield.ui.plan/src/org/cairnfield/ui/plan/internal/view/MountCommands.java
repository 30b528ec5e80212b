package org.cairnfield.ui.plan.internal.view;

import java.util.Optional;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;

/** The commands about where the access point that is chosen is mounted. */
final class MountCommands {

	private static final String TITLE = Messages.MountCommands_placeOfAnAccessPoint;

	private MountCommands() {
	}

	/** Lets a person click where it is mounted. */
	static void set(PlanPane pane) {
		chosen(pane).ifPresent(pane::mount);
	}

	/** Unsets its place. */
	static void forget(PlanPane pane) {
		chosen(pane).ifPresent(accessPoint -> {
			PlanCanvas plan = pane.plan();
			plan.tools().mount().giveUp();
			if (accessPoint.getPlace() == null) {
				MessageDialog.openInformation(plan.canvas().getShell(), TITLE,
						NLS.bind(Messages.MountCommands_nobodyHasSaidWhereIs, ModelText.address(accessPoint)));
			} else {
				plan.session().run(Editable.of(accessPoint, Literals.ACCESS_POINT__PLACE).orElseThrow().change(""));
			}
		});
	}

	private static Optional<AccessPoint> chosen(PlanPane pane) {
		Optional<AccessPoint> chosen = Sessions.workbench().current().map(session -> session.selection().accessPoint());
		if (chosen.isEmpty()) {
			MessageDialog.openInformation(pane.plan().canvas().getShell(), TITLE,
					Messages.MountCommands_chooseAnAccessPointFirst);
		}
		return chosen;
	}
}
