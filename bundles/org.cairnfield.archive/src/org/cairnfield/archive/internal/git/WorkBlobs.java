package org.cairnfield.archive.internal.git;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.CorruptObjectException;
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
		index = index(repository);
		Path file = repository.getIndexFile().toPath();
		indexTime = Files.exists(file) ? Files.getLastModifiedTime(file).toInstant() : Instant.MIN;
	}

	/** @throws DamagedException where the index cannot be read */
	static DirCache index(Repository repository) throws IOException {
		return read(repository, repository::readDirCache);
	}

	/** The same, locked. */
	static DirCache locked(Repository repository) throws IOException {
		return read(repository, repository::lockDirCache);
	}

	private interface Reading {
		DirCache read() throws IOException;
	}

	private static DirCache read(Repository repository, Reading reading) throws IOException {
		try {
			return reading.read();
		} catch (CorruptObjectException | EOFException | RuntimeException e) { // a wild length ends in whatever comes first
			Damage damage = new Damage(".git/index", 0, Words.bind(Messages.WorkBlobs_cannotBeRead, e.getMessage()),
					Messages.WorkBlobs_deleteItTheNextSave);
			throw new DamagedException(
					Words.bind(Messages.WorkBlobs_theHistoryOfIsDamaged, repository.getWorkTree(), damage.reason()),
					damage.remedy(), List.of(damage), e);
		}
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
		try (InputStream in = Files.newInputStream(file);
				ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
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
