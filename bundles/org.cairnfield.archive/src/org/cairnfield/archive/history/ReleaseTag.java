package org.cairnfield.archive.history;

import java.time.Instant;

import org.cairnfield.archive.internal.git.Tag;

/**
 * A state that was released: an annotated tag, for Git.
 *
 * @param id        of the tag itself, 40 hexadecimal digits; it stands for all that the tag holds, the signature too
 * @param version   as the tag is named
 * @param savePoint the state
 * @param person    who signed for it
 * @param time      by that person's clock
 * @param message   whole
 * @param signed    whether the tag carries a cryptographic signature; {@link HistoryCheck#signature} checks it
 */
public record ReleaseTag(String id, String version, SavePoint savePoint, String person, Instant time, String message,
		boolean signed) {

	static ReleaseTag of(Tag tag) {
		return new ReleaseTag(tag.id(), tag.name(), SavePoint.of(tag.commit()), tag.person(), tag.time(), tag.message(),
				tag.signed());
	}
}
