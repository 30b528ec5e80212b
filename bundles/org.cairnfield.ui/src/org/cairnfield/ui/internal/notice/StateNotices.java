package org.cairnfield.ui.internal.notice;

import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;

/** Says above all perspectives what is the matter with the archive on show: a past state, read-only, damaged. */
public final class StateNotices implements SessionListener {

	private static final String STATE = "state";
	private static final String DAMAGE = "damage";

	public StateNotices() {
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession session) {
		List<Damage> damages = session == null ? List.of() : Damaged.damages(session);
		if (damages.isEmpty()) {
			Notices.workbench().remove(DAMAGE);
		} else {
			Notices.workbench().say(new Notice(DAMAGE, Notice.Kind.ERROR, "The archive is damaged ("
					+ (damages.size() == 1 ? damages.get(0).file() : damages.size() + " places") + "): part of the map is missing. "
					+ "It can neither be changed nor measured, exported or released.",
					List.of(new Notice.Action("Show", () -> new DamageDialog(null, damages).open()))));
		}
		if (session == null || session.readOnlyReason().isEmpty() || session.past().isEmpty() && !damages.isEmpty()) {
			Notices.workbench().remove(STATE);
		} else {
			Notices.workbench().say(new Notice(STATE, Notice.Kind.INFORMATION, "Read-only: " + session.readOnlyReason().get() + ".",
					session.past().isEmpty() ? List.of()
							: List.of(new Notice.Action("Back to the present state", Sessions.workbench()::backToPresent))));
		}
	}
}
