package org.cairnfield.archive.internal.git;

import java.time.Instant;
import java.util.List;

/**
 * A commit.
 *
 * @param id      40 hexadecimal digits
 * @param author  name of who made the change
 * @param email   of the author, may be empty
 * @param time    when the author made it, by the author's clock
 * @param message whole
 * @param parents ids, the first one being the line that was followed
 */
public record Commit(String id, String author, String email, Instant time, String message, List<String> parents) {
}
