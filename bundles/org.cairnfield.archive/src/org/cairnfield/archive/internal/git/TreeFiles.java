package org.cairnfield.archive.internal.git;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.treewalk.TreeWalk;

/** The files of a commit, read from Git's objects without touching the folder. */
public final class TreeFiles implements FileSource {

	private final Repository repository;
	private final SortedMap<String, ObjectId> blobs = new TreeMap<>();

	TreeFiles(Repository repository, ObjectId tree, Predicate<String> wanted) throws IOException {
		this.repository = repository;
		if (tree == null) {
			return;
		}
		try (TreeWalk walk = new TreeWalk(repository)) {
			walk.addTree(tree);
			walk.setRecursive(true);
			while (walk.next()) {
				FileMode mode = walk.getFileMode();
				// links and repositories within are not followed
				if ((mode == FileMode.REGULAR_FILE || mode == FileMode.EXECUTABLE_FILE)
						&& wanted.test(walk.getPathString())) {
					blobs.put(walk.getPathString(), walk.getObjectId(0));
				}
			}
		} catch (MissingObjectException e) {
			throw Commits.damaged(e.getObjectId().name(), Messages.TreeFiles_aFolderOfTheState, e);
		} catch (IOException | RuntimeException e) { // a wild length ends in whatever comes first
			throw Commits.damaged(tree.name(), Words.bind(Messages.TreeFiles_aFolderOfTheState2, e.getMessage()), e);
		}
	}

	@Override
	public Iterable<String> paths() {
		return new TreeSet<>(blobs.keySet());
	}

	@Override
	public boolean has(String path) {
		return blobs.containsKey(path);
	}

	/** Git's name of the content of a file, the same for the same bytes; null if the file is not there. */
	public String blob(String path) {
		ObjectId blob = blobs.get(path);
		return blob == null ? null : blob.name();
	}

	@Override
	public InputStream open(String path) throws IOException {
		ObjectId blob = blobs.get(path);
		if (blob == null) {
			throw new NoSuchFileException(path);
		}
		try {
			return new Checked(blob, repository.open(blob, Constants.OBJ_BLOB).openStream());
		} catch (IOException | RuntimeException e) {
			throw unreadable(blob, e);
		}
	}

	private static DamagedException unreadable(ObjectId blob, Exception cause) {
		return Commits.damaged(blob.name(), Words.bind(Messages.TreeFiles_aFileOfTheState, cause.getMessage()),
				cause);
	}

	/** Names the object where it turns out to be damaged on the way. */
	private static final class Checked extends FilterInputStream {

		private final ObjectId blob;

		Checked(ObjectId blob, InputStream in) {
			super(in);
			this.blob = blob;
		}

		@Override
		public int read() throws IOException {
			try {
				return in.read();
			} catch (IOException | RuntimeException e) {
				throw unreadable(blob, e);
			}
		}

		@Override
		public int read(byte[] buffer, int from, int length) throws IOException {
			try {
				return in.read(buffer, from, length);
			} catch (IOException | RuntimeException e) {
				throw unreadable(blob, e);
			}
		}
	}
}
