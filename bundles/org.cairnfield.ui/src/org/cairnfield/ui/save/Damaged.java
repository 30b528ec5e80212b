package org.cairnfield.ui.save;

import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Of a damaged archive part of the map is missing: nothing that others will rely on is made of it unasked. */
public final class Damaged {

	private Damaged() {
	}

	/** What is wrong with the state on show. */
	public static List<Damage> damages(ArchiveSession session) {
		return session.past().map(past -> past.damages()).orElseGet(() -> session.open().damages());
	}

	/**
	 * Refuses what would not name the damage: tells the person why it cannot be done where the state on show is damaged.
	 *
	 * @param what such as "Export"
	 * @return whether it may be done
	 */
	public static boolean isSound(Shell shell, ArchiveSession session, String what) {
		List<Damage> damages = damages(session);
		if (!damages.isEmpty()) {
			MessageDialog.openError(shell, what, NLS.bind(Messages.Damaged_mendItFirstRestoreA, problem(damages)));
		}
		return damages.isEmpty();
	}

	/**
	 * Asks whether to go on where the state on show is damaged, for what names the damage in its output.
	 *
	 * @param what such as "Export"
	 * @return whether it may be done; whoever does it passes {@link #damages} on to what is written
	 */
	public static boolean mayGoOn(Shell shell, ArchiveSession session, String what) {
		List<Damage> damages = damages(session);
		return damages.isEmpty() || MessageDialog.open(MessageDialog.WARNING, shell, what,
				NLS.bind(Messages.Damaged_youCanMendItFirst, problem(damages)), 0,
				Messages.Damaged_goOnDespiteTheDamage, Messages.Damaged_cancel) == 0;
	}

	private static String problem(List<Damage> damages) {
		return NLS.bind(Messages.Damaged_theArchiveIsDamagedAnd, damages.get(0),
				damages.size() > 1 ? NLS.bind(Messages.Damaged_andMore, damages.size() - 1) : "");
	}
}
