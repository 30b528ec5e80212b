package org.cairnfield.ui.internal.app;

import org.cairnfield.archive.history.PastState;
import org.cairnfield.model.Archive;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;

/** The title tells archive, scope, and whether there is unsaved work. */
final class WindowTitle implements SessionListener {

	private final IWorkbenchWindowConfigurer window;

	WindowTitle(IWorkbenchWindowConfigurer window) {
		this.window = window;
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession session) {
		show();
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (before.scope() != now.scope()) {
			show();
		}
	}

	@Override
	public void structureChanged() {
		show();
	}

	@Override
	public void stateChanged() {
		show();
	}

	private void show() {
		String text = Sessions.workbench().current().map(WindowTitle::text).orElse("Cairnfield");
		if (!text.equals(window.getTitle())) {
			window.setTitle(text);
		}
	}

	private static String text(ArchiveSession session) {
		StringBuilder text = new StringBuilder(session.isModified() ? "*" : "");
		text.append(ModelText.name(session.archive()));
		EObject scope = session.selection().scope();
		if (!(scope instanceof Archive)) {
			text.append(" – ").append(ModelText.name(scope));
			if (scope.eContainer() != null && !(scope.eContainer() instanceof Archive)) {
				text.append(", ").append(ModelText.name(scope.eContainer()));
			}
		}
		text.append(session.isModified() ? Messages.WindowTitle_unsavedChanges : "");
		text.append(session.past().map(WindowTitle::text).orElse(""));
		text.append(session.readOnlyReason().isPresent() ? Messages.WindowTitle_readOnly : "");
		return text.append(Messages.WindowTitle_cairnfield).toString();
	}

	private static String text(PastState past) {
		return past.releases().isEmpty() ? NLS.bind(Messages.WindowTitle_savePoint, past.savePoint().shortId())
				: NLS.bind(Messages.WindowTitle_release, String.join(", ", past.releases()));
	}

	void dispose() {
		Sessions.workbench().remove(this);
	}
}
