package org.cairnfield.archive.internal.git;

import java.time.Instant;

/**
 * An annotated tag on a commit.
 *
 * @param name    without refs/tags/
 * @param commit  what it names
 * @param person  who made it
 * @param message without the signature
 * @param signed  whether it carries a signature; nobody has checked it
 */
public record Tag(String name, Commit commit, String person, Instant time, String message, boolean signed) {
}
