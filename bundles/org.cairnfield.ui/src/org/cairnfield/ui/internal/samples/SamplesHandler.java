package org.cairnfield.ui.internal.samples;

import java.util.function.Consumer;

import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command on the samples selected; it asks, where it has to, in the view of the samples, whichever part it comes from. */
abstract class SamplesHandler extends AbstractHandler implements SessionListener {

	private final Consumer<SampleActions> action;
	private final boolean changes;

	/** @param changes whether it is of no use in an archive that cannot be changed */
	protected SamplesHandler(Consumer<SampleActions> action, boolean changes) {
		this.action = action;
		this.changes = changes;
		Sessions.workbench().add(this);
	}

	@Override
	public final Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
			SamplesView view = (SamplesView) page.showView(SamplesView.ID);
			action.accept(view.actions());
			return null;
		} catch (PartInitException e) {
			throw new ExecutionException(Messages.SamplesHandler_theViewOfTheSamples, e);
		}
	}

	private void enable() {
		setBaseEnabled(Sessions.workbench().current().filter(session -> !session.selection().samples().isEmpty()
				&& (!changes || session.readOnlyReason().isEmpty())).isPresent());
	}

	@Override
	public final void sessionChanged(ArchiveSession session) {
		enable();
	}

	@Override
	public final void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		enable();
	}

	@Override
	public final void stateChanged() {
		enable();
	}

	@Override
	public final void dispose() {
		Sessions.workbench().remove(this);
		super.dispose();
	}
}
