package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.InputStream;

/** Files by path, wherever they come from: a folder, or a past state of it. */
public interface FileSource {

	/** Paths of the files, sorted, with / between steps. */
	Iterable<String> paths();

	/** Whether the file is there. */
	boolean has(String path);

	/** The content of a file; the caller closes it. */
	InputStream open(String path) throws IOException;
}
