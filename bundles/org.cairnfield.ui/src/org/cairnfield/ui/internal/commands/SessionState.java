package org.cairnfield.ui.internal.commands;

import java.util.Map;
import java.util.Optional;

import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.ui.AbstractSourceProvider;
import org.eclipse.ui.ISources;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;

/** What commands may ask about the archive on show, as variables for plugin.xml. All are TRUE or FALSE. */
public final class SessionState extends AbstractSourceProvider implements SessionListener {

	/** An archive is on show. */
	static final String OPEN = "org.cairnfield.ui.open";
	/** It may be changed. */
	static final String EDITABLE = "org.cairnfield.ui.editable";
	/** It was changed and not saved. */
	static final String MODIFIED = "org.cairnfield.ui.modified";
	/** There is a change to take back. */
	static final String CAN_UNDO = "org.cairnfield.ui.canUndo";
	/** There is a change that was taken back. */
	static final String CAN_REDO = "org.cairnfield.ui.canRedo";
	/** Samples are selected. */
	static final String SAMPLES = "org.cairnfield.ui.samplesSelected";

	public SessionState() {
		Sessions.workbench().add(this);
	}

	@Override
	public String[] getProvidedSourceNames() {
		return new String[] { OPEN, EDITABLE, MODIFIED, CAN_UNDO, CAN_REDO, SAMPLES };
	}

	@Override
	public Map<String, Object> getCurrentState() {
		Optional<ArchiveSession> session = Sessions.workbench().current();
		Optional<ArchiveSession> editable = session.filter(s -> s.readOnlyReason().isEmpty());
		return Map.of(OPEN, session.isPresent(), EDITABLE, editable.isPresent(), MODIFIED,
				session.filter(ArchiveSession::isModified).isPresent(), CAN_UNDO,
				editable.filter(s -> s.commands().canUndo()).isPresent(), CAN_REDO,
				editable.filter(s -> s.commands().canRedo()).isPresent(), SAMPLES,
				session.filter(s -> !s.selection().samples().isEmpty()).isPresent());
	}

	private void tell() {
		fireSourceChanged(ISources.WORKBENCH, getCurrentState());
	}

	@Override
	public void sessionChanged(ArchiveSession session) {
		tell();
	}

	@Override
	public void stateChanged() {
		tell();
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null); // they say what they would undo
		commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (before.samples().isEmpty() != now.samples().isEmpty()) {
			tell();
		}
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
	}
}
