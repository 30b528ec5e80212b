package org.cairnfield.ui.internal.notice;

import java.util.List;

import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;

/** Says above all perspectives what is the matter with the archive on show: a past state, read-only. */
public final class StateNotices implements SessionListener {

	private static final String STATE = "state";

	public StateNotices() {
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession session) {
		if (session == null || session.readOnlyReason().isEmpty()) {
			Notices.workbench().remove(STATE);
		} else {
			Notices.workbench().say(new Notice(STATE, Notice.Kind.INFORMATION, "Read-only: " + session.readOnlyReason().get() + ".",
					session.past().isEmpty() ? List.of()
							: List.of(new Notice.Action("Back to the present state", Sessions.workbench()::backToPresent))));
		}
	}
}
