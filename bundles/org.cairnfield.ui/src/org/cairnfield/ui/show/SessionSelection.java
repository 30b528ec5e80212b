package org.cairnfield.ui.show;

import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.SelectedSamples;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.runtime.ListenerList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPartSite;

/**
 * Tells the workbench, and so the Properties view, what is selected in the session: the samples, or else the scope. For
 * views that show samples.
 */
public final class SessionSelection implements ISelectionProvider, SessionListener {

	private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();
	private ArchiveSession session;

	private SessionSelection() {
	}

	/** Provides the selection of a view for as long as a control of it lives. */
	public static void provide(IWorkbenchPartSite site, Control control) {
		SessionSelection made = new SessionSelection();
		Sessions.workbench().add(made);
		control.addListener(SWT.Dispose, event -> Sessions.workbench().remove(made));
		site.setSelectionProvider(made);
	}

	@Override
	public ISelection getSelection() {
		if (session == null) {
			return StructuredSelection.EMPTY;
		}
		ArchiveSelection now = session.selection();
		return new StructuredSelection(now.samples().isEmpty() ? now.scope() : new SelectedSamples(now.samples()));
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		tell();
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (before.scope() != now.scope() || !before.samples().equals(now.samples())) {
			tell();
		}
	}

	private void tell() {
		SelectionChangedEvent event = new SelectionChangedEvent(this, getSelection());
		listeners.forEach(listener -> listener.selectionChanged(event));
	}

	@Override
	public void setSelection(ISelection selection) {
		// the session is what selects
	}

	@Override
	public void addSelectionChangedListener(ISelectionChangedListener listener) {
		listeners.add(listener);
	}

	@Override
	public void removeSelectionChangedListener(ISelectionChangedListener listener) {
		listeners.remove(listener);
	}
}
