package org.cairnfield.ui.tests.wander;

import java.util.List;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Link;

/** After a crash: takes what the program offers, and compares it with what there was. */
final class Recovering {

	private Recovering() {
	}

	/** @param expected digests of states that the archive was in just before */
	static void bringBack(List<String> expected) {
		ArchiveSession session = Sessions.workbench().current().get();
		boolean offered = Widgets.isOpen("Unsaved") || Ui.ask(() -> Widgets.isThere("explorer.banner", Link.class, link -> link.getText().contains("not saved")));
		if (offered) {
			Link banner = Widgets.byId(Link.class, "explorer.banner");
			Ui.waitUntil("the banner has the focus", banner::forceFocus);
			Hand.press("Return");
			Ui.waitUntil("it is brought back", session::isModified);
		}
		String found = Ui.ask(() -> session.open().digest());
		if (!expected.contains(found)) {
			throw new AssertionError((offered ? "what was brought back" : "nothing was offered, and what is on disk") + " is none of the last states: "
					+ found + " not in " + expected);
		}
	}
}
