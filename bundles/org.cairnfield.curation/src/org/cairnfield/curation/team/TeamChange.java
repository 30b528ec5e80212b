package org.cairnfield.curation.team;

import org.eclipse.emf.common.command.Command;

/** A change of the archive that can be undone and is not made yet. */
public record TeamChange(Command command) {

	/** Makes it, outside any undo stack. */
	public void apply() {
		if (command.canExecute()) {
			command.execute();
		}
	}
}
