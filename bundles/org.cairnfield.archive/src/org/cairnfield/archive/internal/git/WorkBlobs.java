package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;

import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Repository;

/**
 * Git's names for the contents of files in the folder. A file that has not been touched since the index saw it is not read
 * again; by Git's own rule one that is as young as the index may have been touched unseen, and is.
 */
final class WorkBlobs {

	private final DirCache index;
	private final Instant indexTime;

	WorkBlobs(Repository repository) throws IOException {
		index = repository.readDirCache();
		Path file = repository.getIndexFile().toPath();
		indexTime = Files.exists(file) ? Files.getLastModifiedTime(file).toInstant() : Instant.MIN;
	}

	/** The name of what the file holds now. */
	ObjectId of(String path, Path file) throws IOException {
		BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
		DirCacheEntry known = index.getEntry(path);
		Instant modified = now.lastModifiedTime().toInstant();
		if (known != null && !known.isSmudged() && known.getStage() == 0 && known.getLength() == (int) now.size()
				&& known.getLastModifiedInstant().equals(modified) && modified.isBefore(indexTime)) {
			return known.getObjectId();
		}
		try (InputStream in = Files.newInputStream(file); ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
			return formatter.idFor(Constants.OBJ_BLOB, now.size(), in);
		}
	}

	/** An entry of the index for the file. */
	static DirCacheEntry entry(String path, Path file, ObjectId blob) throws IOException {
		BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
		DirCacheEntry entry = new DirCacheEntry(path);
		entry.setFileMode(FileMode.REGULAR_FILE);
		entry.setObjectId(blob);
		entry.setLength(now.size());
		entry.setLastModified(now.lastModifiedTime().toInstant());
		return entry;
	}
}
