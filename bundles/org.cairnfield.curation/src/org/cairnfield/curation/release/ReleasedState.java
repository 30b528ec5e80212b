package org.cairnfield.curation.release;

import org.cairnfield.archive.history.ReleaseTag;

/**
 * A release as the history has it.
 *
 * @param version  by Semantic Versioning
 * @param tag      of Git
 * @param manifest as it was released
 */
public record ReleasedState(SemanticVersion version, ReleaseTag tag, ReleaseManifest manifest) {
}
