package org.cairnfield.ui.tests.wander;

import java.util.List;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;

/** After a crash: takes what the program offers, and compares it with what there was. */
final class Recovering {

	private static final String OFFER = "Unsaved work";

	private Recovering() {
	}

	/** Whether the front window is the offer. */
	static boolean isOffered() {
		return Widgets.isOpen(OFFER);
	}

	/**
	 * Brings back what is offered. What was brought back before, undone, and left behind by a save can be brought back no more
	 * and is kept for later; what is on disk has to be right then.
	 *
	 * @return whether something was brought back
	 */
	static boolean accept() {
		Button bringBack = Widgets.byId(Button.class, "recovery.bringBack");
		boolean fits = Ui.ask(bringBack::isEnabled);
		Hand.click(fits ? bringBack : Widgets.byId(Button.class, "recovery.keep"));
		Ui.waitUntil("the offer is taken", () -> !isOffered());
		Ui.waitUntilIdle();
		return fits;
	}

	/** @param expected digests of states that the archive was in just before */
	static void bringBack(List<String> expected) {
		boolean broughtBack = isOffered() && accept();
		ArchiveSession session = Sessions.workbench().current().get();
		String found = Ui.ask(() -> session.open().digest());
		if (!expected.contains(found)) {
			throw new AssertionError(
					(broughtBack ? "what was brought back" : "nothing could be brought back, and what is on disk")
							+ " is none of the last states: "
							+ found + " not in " + expected);
		}
	}
}
