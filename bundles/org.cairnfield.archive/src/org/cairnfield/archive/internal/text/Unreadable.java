package org.cairnfield.archive.internal.text;

import java.io.IOException;

/** A line that is not as it was written. */
final class Unreadable extends IOException {

	private static final long serialVersionUID = 1;

	Unreadable(String reason) {
		super(reason);
	}
}
