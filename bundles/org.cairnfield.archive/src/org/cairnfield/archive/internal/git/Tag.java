package org.cairnfield.archive.internal.git;

import java.time.Instant;

/**
 * An annotated tag on a commit.
 *
 * @param id      40 hexadecimal digits, of the tag itself
 * @param name    without refs/tags/
 * @param commit  what it names
 * @param person  who made it
 * @param message without the signature
 * @param signed  whether it carries a signature; nobody has checked it
 */
public record Tag(String id, String name, Commit commit, String person, Instant time, String message, boolean signed) {
}
