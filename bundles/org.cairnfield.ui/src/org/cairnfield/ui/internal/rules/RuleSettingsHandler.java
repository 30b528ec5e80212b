package org.cairnfield.ui.internal.rules;

import java.util.Optional;

import org.cairnfield.ui.internal.app.ViewIds;
import org.cairnfield.ui.internal.findings.FindingsView;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the page of the rules at the rule of the finding that is selected. */
public final class RuleSettingsHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		Optional<String> rule = window.getActivePage().findView(ViewIds.FINDINGS) instanceof FindingsView view
				? view.selectedRule()
				: Optional.empty();
		PreferencesUtil.createPreferenceDialogOn(window.getShell(), RulesPage.ID, null, rule.orElse(null)).open();
		return null;
	}
}
