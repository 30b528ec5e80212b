package org.cairnfield.archive.history;

import java.io.IOException;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.model.Archive;

/**
 * An archive as it was. Changes to the model lead nowhere: there is no way to save it.
 *
 * @param savePoint which state
 * @param releases  versions that it was released as, none as a rule
 * @param damages   files that could not be read, none as a rule
 */
public record PastState(SavePoint savePoint, List<String> releases, Archive archive, List<Damage> damages) {

	/** SHA-256 of the content, as that of an open archive. */
	public String digest() throws IOException {
		return ArchiveFiles.digest(archive);
	}
}
