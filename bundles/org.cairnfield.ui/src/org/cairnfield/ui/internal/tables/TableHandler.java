package org.cairnfield.ui.internal.tables;

import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISources;
import org.eclipse.ui.handlers.HandlerUtil;

/** Does something with the table that has the focus; given as {@code …TableHandler:copy} or {@code …TableHandler:save}. */
public final class TableHandler extends AbstractHandler implements IExecutableExtension {

	private static final Map<String, Consumer<Control>> ACTIONS = Map.of("copy", TableTools::copy, "save",
			TableTools::save);

	private Consumer<Control> action;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		action = ACTIONS.get(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getVariable(event, ISources.ACTIVE_FOCUS_CONTROL_NAME) instanceof Control table
				&& !table.isDisposed()) {
			action.accept(table);
		}
		return null;
	}
}
