package org.cairnfield.ui.save;

import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Nothing that others will rely on is made of a damaged archive: part of the map is missing in it. */
public final class Damaged {

	private Damaged() {
	}

	/** What is wrong with the state on show. */
	public static List<Damage> damages(ArchiveSession session) {
		return session.past().map(past -> past.damages()).orElseGet(() -> session.open().damages());
	}

	/**
	 * Tells the person why something cannot be done where the state on show is damaged.
	 *
	 * @param what such as "Export"
	 * @return whether it may be done
	 */
	public static boolean isSound(Shell shell, ArchiveSession session, String what) {
		List<Damage> damages = damages(session);
		if (damages.isEmpty()) {
			return true;
		}
		MessageDialog.openError(shell, what, "The archive is damaged, and part of the map is missing: " + damages.get(0)
				+ (damages.size() > 1 ? ", and " + (damages.size() - 1) + " more" : "")
				+ ".\n\nMend it first: restore a save point in History, or bring back the files. To go on all the same, use the batch "
				+ "command with --despite-damage, which names the damage in what it writes.");
		return false;
	}
}
