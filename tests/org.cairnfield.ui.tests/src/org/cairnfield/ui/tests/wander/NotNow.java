package org.cairnfield.ui.tests.wander;

/** What an act needs is not there now; another one is tried. */
final class NotNow extends RuntimeException {

	private static final long serialVersionUID = 1;

	NotNow(String what) {
		super(what, null, false, false);
	}
}
