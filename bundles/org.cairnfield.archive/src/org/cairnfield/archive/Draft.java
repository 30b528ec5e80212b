package org.cairnfield.archive;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.fault.LockOwner;

/**
 * Unsaved work that was kept beside an archive, see {@link Drafts#write}.
 *
 * @param file    where it lies
 * @param fit     whether it can be brought back
 * @param reason  why it can not, a clause; empty where it can
 * @param written when; of a damaged draft, when its file was changed last
 * @param by      the process that wrote it, on which machine; empty for a damaged draft
 * @param person  who made the changes; empty where that is not known
 * @param paths   the files of the archive that it would change, sorted; empty for a damaged draft
 */
public record Draft(Path file, Fit fit, String reason, Instant written, Optional<LockOwner> by, String person,
		List<String> paths) {

	/** How a draft goes with the archive on disk. */
	public enum Fit {

		/** The archive is as it was when the draft was written: it can be brought back. */
		FITS,
		/** The archive holds already what the draft would bring; it can be discarded without loss. */
		SAVED,
		/** The archive was changed since. */
		OTHER_STATE,
		/** The draft can not be read. */
		DAMAGED
	}

	public Draft {
		paths = List.copyOf(paths);
	}
}
