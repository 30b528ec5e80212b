package org.cairnfield.ui.internal.notice;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;

/** Shows above all perspectives what is the matter with the archive on show: a past state, read-only, damaged, or worth knowing. */
public final class StateNotices implements SessionListener {

	private static final String STATE = "state";
	private static final String DAMAGE = "damage";
	private static final String ARCHIVE = "archive";

	public StateNotices() {
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession session) {
		tellOfDamage(session);
		tellOfNotices(session);
	}

	private static void tellOfNotices(ArchiveSession session) {
		List<String> all = session == null || session.past().isPresent() ? List.of()
				: session.open().notices().stream().map(StateNotices::sentence).toList();
		if (all.isEmpty()) {
			Notices.workbench().remove(ARCHIVE);
			return;
		}
		List<Notice.Action> actions = new ArrayList<>();
		if (all.size() > 1) {
			actions.add(new Notice.Action(NLS.bind(Messages.StateNotices_showAll, all.size()),
					() -> MessageDialog.openInformation(null, Messages.StateNotices_aboutThisArchive,
							String.join("\n\n", all))));
		}
		actions.add(new Notice.Action(Messages.StateNotices_dismiss, () -> Notices.workbench().remove(ARCHIVE)));
		Notices.workbench().say(new Notice(ARCHIVE, Notice.Kind.INFORMATION, all.get(0), actions));
	}

	private static String sentence(String notice) {
		return Character.toUpperCase(notice.charAt(0)) + notice.substring(1) + (notice.endsWith(".") ? "" : ".");
	}

	private static void tellOfDamage(ArchiveSession session) {
		List<Damage> damages = session == null ? List.of() : Damaged.damages(session);
		if (damages.isEmpty()) {
			Notices.workbench().remove(DAMAGE);
		} else {
			Notices.workbench()
					.say(new Notice(DAMAGE, Notice.Kind.ERROR,
							NLS.bind(Messages.StateNotices_theArchiveIsDamagedPart,
									damages.size() == 1 ? damages.get(0).file()
											: NLS.bind(Messages.StateNotices_places, damages.size())),
							List.of(new Notice.Action(Messages.StateNotices_show,
									() -> DamageDialog.show(null, damages)))));
		}
		if (session == null || session.readOnlyReason().isEmpty() || session.past().isEmpty() && !damages.isEmpty()) {
			Notices.workbench().remove(STATE);
		} else {
			Notices.workbench()
					.say(new Notice(STATE, Notice.Kind.INFORMATION,
							NLS.bind(Messages.StateNotices_readOnly, session.readOnlyReason().get()),
							session.past().isEmpty() ? List.of()
									: List.of(new Notice.Action(Messages.StateNotices_backToThePresentState,
											Sessions.workbench()::backToPresent))));
		}
	}
}
