package org.cairnfield.ui.internal.commands;

import org.cairnfield.ui.internal.open.Opening;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Opens the demo, made anew where it is gone. */
public final class OpenDemoHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Opening.openDemo();
		return null;
	}
}
