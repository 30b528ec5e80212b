package org.cairnfield.ui.internal.guide;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the page of the guide about the view that has the focus. */
public final class ViewGuideHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		String view = HandlerUtil.getActivePartId(event);
		UserGuide.open(HandlerUtil.getActiveShellChecked(event), view == null ? "" : view);
		return null;
	}
}
