package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.osgi.util.NLS;

/** GEF's stack as a mere gate to the one stack of the archive: it hands commands on and keeps none. */
final class SessionCommands extends CommandStack {

	private ArchiveSession session;

	void session(ArchiveSession other) {
		session = other;
	}

	@Override
	public void execute(Command command) {
		List<org.eclipse.emf.common.command.Command> changes = new ArrayList<>();
		collect(command, changes);
		if (session == null || changes.isEmpty()) {
			return;
		}
		session.run(changes.size() == 1 ? changes.get(0)
				: new CompoundCommand(NLS.bind(Messages.SessionCommands_moveSamples, changes.size()), changes));
	}

	private static void collect(Command command, List<org.eclipse.emf.common.command.Command> changes) {
		if (command instanceof ModelCommand model && model.change().canExecute()) {
			changes.add(model.change());
		} else if (command instanceof org.eclipse.gef.commands.CompoundCommand several) {
			for (Object each : several.getCommands()) {
				collect((Command) each, changes);
			}
		}
	}

	private Optional<org.eclipse.emf.common.command.CommandStack> stack() {
		return Optional.ofNullable(session).map(ArchiveSession::commands);
	}

	@Override
	public boolean canUndo() {
		return stack().map(org.eclipse.emf.common.command.CommandStack::canUndo).orElse(false);
	}

	@Override
	public boolean canRedo() {
		return stack().map(org.eclipse.emf.common.command.CommandStack::canRedo).orElse(false);
	}

	@Override
	public void undo() {
		stack().ifPresent(org.eclipse.emf.common.command.CommandStack::undo);
	}

	@Override
	public void redo() {
		stack().ifPresent(org.eclipse.emf.common.command.CommandStack::redo);
	}

	@Override
	public boolean isDirty() {
		return session != null && session.isModified();
	}
}
