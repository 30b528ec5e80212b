package org.cairnfield.archive.internal.disk;

import java.io.IOException;

/** Takes down how files of a folder are to be. */
public interface FileChanges {

	/**
	 * A file is to have this content.
	 *
	 * @param path below the folder, with / between its steps; each path once
	 * @return whether that changes it
	 */
	boolean put(String path, Content content) throws IOException;

	/** A file is to be gone; whether it was there. */
	boolean delete(String path) throws IOException;
}
