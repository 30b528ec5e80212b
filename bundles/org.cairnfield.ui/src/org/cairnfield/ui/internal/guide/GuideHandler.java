package org.cairnfield.ui.internal.guide;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the contents of the guide. */
public final class GuideHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		UserGuide.open(HandlerUtil.getActiveShellChecked(event), "");
		return null;
	}
}
