package org.cairnfield.ui.tests.robot;

import org.eclipse.swt.graphics.Point;

/** What is to be clicked moves on and on, or something lies over it. */
public final class Unreachable extends AssertionError {

	private static final long serialVersionUID = 1;

	Unreachable(Point at) {
		super("waited in vain until what is clicked lies still under the pointer, at " + at);
	}
}
