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

	/** Brings back what is offered. Nothing is kept for later, so that the next offer is of one crash only. */
	static void accept() {
		Hand.click(Widgets.byId(Button.class, "recovery.bringBack"));
		Ui.waitUntil("the offer is taken", () -> !isOffered());
		Ui.waitUntilIdle();
	}

	/** @param expected digests of states that the archive was in just before */
	static void bringBack(List<String> expected) {
		boolean offered = isOffered();
		if (offered) {
			accept();
		}
		ArchiveSession session = Sessions.workbench().current().get();
		String found = Ui.ask(() -> session.open().digest());
		if (!expected.contains(found)) {
			throw new AssertionError((offered ? "what was brought back" : "nothing was offered, and what is on disk") + " is none of the last states: "
					+ found + " not in " + expected);
		}
	}
}
