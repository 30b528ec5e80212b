package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cairnfield.archive.internal.disk.Places;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * Brings files of the folder, and the index, from one commit to another, byte by byte. Links and repositories within are left
 * out, and so is a file that somebody has changed in the folder.
 */
final class CheckOut {

	private final Path root;
	private final Repository repository;
	private final Predicate<String> wanted;

	/** @param wanted the paths to look at */
	CheckOut(Path root, Repository repository, Predicate<String> wanted) {
		this.root = root;
		this.repository = repository;
		this.wanted = wanted;
	}

	/** @param before null where there is nothing in the folder yet */
	void move(RevCommit before, RevCommit after) throws IOException {
		SortedMap<String, ObjectId> then = files(before);
		SortedMap<String, ObjectId> now = files(after);
		SortedSet<String> changed = new TreeSet<>(then.keySet());
		changed.addAll(now.keySet());
		changed.removeIf(path -> Objects.equals(then.get(path), now.get(path)));
		if (changed.isEmpty()) {
			return;
		}
		DirCache index = WorkBlobs.locked(repository);
		try {
			DirCacheBuilder builder = index.builder();
			for (int i = 0; i < index.getEntryCount(); i++) {
				if (!changed.contains(index.getEntry(i).getPathString())) {
					builder.add(index.getEntry(i));
				}
			}
			for (String path : changed) {
				Path file = Places.inside(root, path);
				if (isAs(path, file, then.get(path))) {
					put(file, now.get(path));
				}
				if (now.containsKey(path) && Places.isFile(file)) {
					builder.add(WorkBlobs.entry(path, file, now.get(path)));
				}
			}
			builder.finish();
			index.write();
			index.commit();
		} finally {
			index.unlock();
		}
	}

	private boolean isAs(String path, Path file, ObjectId blob) throws IOException {
		if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			return true;
		}
		return blob != null && Places.isFile(file) && new WorkBlobs(repository).of(path, file).equals(blob);
	}

	private void put(Path file, ObjectId blob) throws IOException {
		if (blob == null) {
			Files.deleteIfExists(file);
			return;
		}
		Files.createDirectories(file.getParent());
		try (InputStream in = repository.open(blob, Constants.OBJ_BLOB).openStream()) {
			Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
		}
	}

	private SortedMap<String, ObjectId> files(RevCommit commit) throws IOException {
		SortedMap<String, ObjectId> files = new TreeMap<>();
		if (commit != null) {
			try (TreeWalk walk = new TreeWalk(repository)) {
				walk.addTree(commit.getTree());
				walk.setRecursive(true);
				while (walk.next()) {
					boolean plain = walk.getFileMode() == FileMode.REGULAR_FILE
							|| walk.getFileMode() == FileMode.EXECUTABLE_FILE;
					if (plain && wanted.test(walk.getPathString()) && Places.staysInside(walk.getPathString())) {
						files.put(walk.getPathString(), walk.getObjectId(0));
					}
				}
			}
		}
		return files;
	}
}
