package org.cairnfield.archive.history;

/**
 * A text about a release as it came into the history.
 *
 * @param version   as its file is named
 * @param savePoint that brought it
 * @param content   the bytes
 */
public record PastManifest(String version, SavePoint savePoint, byte[] content) {
}
