package org.cairnfield.ui.plan.internal.view;

import java.util.List;
import java.util.Map;

import org.cairnfield.ui.plan.internal.gef.OutlineEditor;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;

/** While an outline is drawn and the plan is active, undo and redo go through its steps and leave the archive alone. */
final class OutlineUndo {

	private final IWorkbenchPartSite site;
	private final OutlineEditor editor;
	private List<IHandlerActivation> active = List.of();

	OutlineUndo(IWorkbenchPartSite site, OutlineEditor editor) {
		this.site = site;
		this.editor = editor;
		editor.watch(this::follow);
	}

	private void follow() {
		IHandlerService handlers = site.getService(IHandlerService.class);
		if (editor.isOn() && active.isEmpty()) {
			active = List.of(
					handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO,
							new Step(Messages.OutlineUndo_undoStepOfTheOutline, editor::undo)),
					handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO,
							new Step(Messages.OutlineUndo_redoStepOfTheOutline, editor::redo)));
		} else if (!editor.isOn() && !active.isEmpty()) {
			handlers.deactivateHandlers(active);
			active = List.of();
		} else {
			return;
		}
		ICommandService commands = site.getService(ICommandService.class);
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null);
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
	}

	private static final class Step extends AbstractHandler implements IElementUpdater {

		private final String name;
		private final Runnable step;

		Step(String name, Runnable step) {
			this.name = name;
			this.step = step;
		}

		@Override
		public Object execute(ExecutionEvent event) {
			step.run();
			return null;
		}

		@Override
		@SuppressWarnings("rawtypes")
		public void updateElement(UIElement element, Map parameters) {
			element.setText(name);
			element.setTooltip(name);
		}
	}
}
