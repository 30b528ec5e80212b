package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.gef.commands.Command;

/** What a gesture wants done to the model, as GEF passes it about. */
final class ModelCommand extends Command {

	private final org.eclipse.emf.common.command.Command change;

	ModelCommand(org.eclipse.emf.common.command.Command change) {
		super(change.getLabel());
		this.change = change;
	}

	org.eclipse.emf.common.command.Command change() {
		return change;
	}
}
