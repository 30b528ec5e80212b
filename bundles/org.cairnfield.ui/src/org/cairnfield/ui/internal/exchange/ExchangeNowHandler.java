package org.cairnfield.ui.internal.exchange;

import java.util.Map;

import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Exchanges the archive with others; where that cannot be, the menu names the reason. */
public final class ExchangeNowHandler extends AbstractHandler implements IElementUpdater {

	static final String COMMAND = "org.cairnfield.ui.exchange";

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().ifPresent(Exchanging::run);
		return null;
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		element.setText(NLS.bind(Messages.ExchangeNowHandler_exchangeWithOthers,
				Connection.workbench().obstacle().map(reason -> ": " + reason).orElse("")));
	}
}
