package org.cairnfield.ui.tests.wander;

import org.cairnfield.ui.tests.robot.Ui;

/** A person who does nothing for a while, during which drafts are written and rules look. */
final class Rest {

	private Rest() {
	}

	/** @param end by {@link System#nanoTime} */
	static void until(long end) {
		Ui.waitUntil("the rest is over", () -> System.nanoTime() > end);
	}
}
