package org.cairnfield.ui.internal.open;

import java.util.Optional;

import org.cairnfield.ui.session.ArchiveSession;

/** The present state, unsaved changes and all, while a past one is on show. */
final class Present {

	private static ArchiveSession kept;

	private Present() {
	}

	static void keep(ArchiveSession session) {
		if (session.past().isEmpty()) {
			kept = session;
		}
	}

	static Optional<ArchiveSession> take() {
		Optional<ArchiveSession> session = Optional.ofNullable(kept);
		kept = null;
		return session;
	}
}
