package org.cairnfield.ui.internal.commands;

import java.util.Map;

import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Takes the last change back, and says in the menu which. */
public final class UndoHandler extends AbstractHandler implements IElementUpdater {

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().map(session -> session.commands()).filter(CommandStack::canUndo)
				.ifPresent(CommandStack::undo);
		return null;
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		String what = Sessions.workbench().current().map(session -> session.commands().getUndoCommand())
				.map(command -> ": " + command.getLabel()).orElse("");
		element.setTooltip(NLS.bind(Messages.UndoHandler_undo, what));
		element.setText(NLS.bind(Messages.UndoHandler_undo, what));
	}
}
