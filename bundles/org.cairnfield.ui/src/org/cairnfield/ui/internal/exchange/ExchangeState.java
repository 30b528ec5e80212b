package org.cairnfield.ui.internal.exchange;

import java.util.Map;

import org.eclipse.ui.AbstractSourceProvider;
import org.eclipse.ui.ISources;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;

/** Whether the archive on show can be exchanged now, as a variable for plugin.xml. */
public final class ExchangeState extends AbstractSourceProvider {

	private static final String CAN_EXCHANGE = "org.cairnfield.ui.canExchange";

	private final ConnectionListener listener = this::tell;

	public ExchangeState() {
		Connection.workbench().add(listener);
	}

	@Override
	public String[] getProvidedSourceNames() {
		return new String[] { CAN_EXCHANGE };
	}

	@Override
	public Map<String, Object> getCurrentState() {
		return Map.of(CAN_EXCHANGE, Connection.workbench().obstacle().isEmpty());
	}

	private void tell() {
		fireSourceChanged(ISources.WORKBENCH, getCurrentState());
		PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(ExchangeNowHandler.COMMAND, null); // it names the obstacle
	}

	@Override
	public void dispose() {
		Connection.workbench().remove(listener);
	}
}
