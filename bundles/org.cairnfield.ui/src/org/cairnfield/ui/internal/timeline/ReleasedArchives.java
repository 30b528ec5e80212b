package org.cairnfield.ui.internal.timeline;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.model.Archive;

/** The last releases of an archive, as they were. */
final class ReleasedArchives {

	/** More curves than that can hardly be told apart. */
	private static final int MOST = 3;

	private ReleasedArchives() {
	}

	/** By version, the newest first; without those that are damaged. */
	static Map<String, Archive> of(OpenArchive open) throws Exception {
		Map<String, Archive> archives = new LinkedHashMap<>();
		ReleaseBook book = new ReleaseBook(open, Clock.systemUTC());
		for (ReleasedState release : book.list()) {
			if (archives.size() < MOST) {
				PastState then = book.openReadOnly(release.version().toString());
				if (then.damages().isEmpty()) {
					archives.put(release.version().toString(), then.archive());
				}
			}
		}
		return archives;
	}
}
