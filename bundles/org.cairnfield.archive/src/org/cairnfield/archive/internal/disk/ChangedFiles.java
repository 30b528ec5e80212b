package org.cairnfield.archive.internal.disk;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * Files of which some are other.
 *
 * @param changes by path; null for a file that is gone
 */
public record ChangedFiles(FileSource files, SortedMap<String, byte[]> changes) implements FileSource {

	@Override
	public Iterable<String> paths() {
		TreeSet<String> paths = new TreeSet<>();
		files.paths().forEach(paths::add);
		paths.addAll(changes.keySet());
		paths.removeIf(path -> !has(path));
		return paths;
	}

	@Override
	public boolean has(String path) {
		return changes.containsKey(path) ? changes.get(path) != null : files.has(path);
	}

	@Override
	public InputStream open(String path) throws IOException {
		byte[] content = changes.get(path);
		return content == null ? files.open(path) : new ByteArrayInputStream(content);
	}
}
