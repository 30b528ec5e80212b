package org.cairnfield.archive.history;

import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.git.TreeFiles;

/**
 * The files of a state.
 *
 * @param blobs by path, a name of the content that is the same for the same bytes
 */
record StateFiles(FileSource source, SortedMap<String, String> blobs) {

	static StateFiles of(TreeFiles files) {
		SortedMap<String, String> blobs = new TreeMap<>();
		for (String path : files.paths()) {
			blobs.put(path, files.blob(path));
		}
		return new StateFiles(files, blobs);
	}
}
