package org.cairnfield.ui.internal.samples;

import java.util.List;
import java.util.function.Consumer;

import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.SessionSelection;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** The samples of the scope as a table. */
public final class SamplesView extends ViewPart {

	public static final String ID = "org.cairnfield.ui.samples";

	private static final String REASONS = "reasons";

	private SamplesPanel panel;
	private IMemento kept;

	@Override
	public void init(IViewSite site, IMemento memento) throws PartInitException {
		super.init(site, memento);
		kept = memento;
	}

	@Override
	public void createPartControl(Composite parent) {
		panel = new SamplesPanel(parent);
		if (kept != null && kept.getString(REASONS) != null) {
			panel.actions().setReasons(List.of(kept.getString(REASONS).split("\n")));
		}
		MenuManager menu = new MenuManager();
		Control table = panel.grid().window().table();
		table.setMenu(menu.createContextMenu(table));
		SessionSelection.provide(getSite(), panel);
		getSite().registerContextMenu(ID, menu, null);
		on(IWorkbenchCommandConstants.EDIT_COPY, panel.actions()::copy, Text::copy, Combo::copy);
		on(IWorkbenchCommandConstants.EDIT_SELECT_ALL, panel.actions()::selectAll, Text::selectAll,
				combo -> combo.setSelection(new Point(0, combo.getText().length())));
		on(IWorkbenchCommandConstants.EDIT_FIND_AND_REPLACE, panel.actions()::find, text -> panel.actions().find(),
				combo -> {
				});
		on(IWorkbenchCommandConstants.FILE_RENAME, panel.actions()::editPosition, text -> {
		}, combo -> {
		});
	}

	/** What a command of the platform does in this view: in a field what the field does itself, otherwise our own. */
	private void on(String command, Runnable inTable, Consumer<Text> inText,
			Consumer<Combo> inCombo) {
		getSite().getService(IHandlerService.class).activateHandler(command, new AbstractHandler() {
			@Override
			public Object execute(ExecutionEvent event) {
				Control focused = panel.getDisplay().getFocusControl();
				if (focused instanceof Text text) {
					inText.accept(text);
				} else if (focused instanceof Combo combo) {
					inCombo.accept(combo);
				} else {
					inTable.run();
				}
				return null;
			}
		});
	}

	/** What can be done with the samples selected. */
	SampleActions actions() {
		return panel.actions();
	}

	@Override
	public void saveState(IMemento memento) {
		if (!panel.actions().reasons().isEmpty()) {
			memento.putString(REASONS, String.join("\n", panel.actions().reasons()));
		}
	}

	@Override
	public void setFocus() {
		Marked.focus(panel);
	}
}
