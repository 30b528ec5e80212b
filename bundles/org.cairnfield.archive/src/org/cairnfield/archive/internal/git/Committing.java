package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * Commits files as they are on disk. What the commit before has at other paths stays, and so does what somebody has added to
 * the index there.
 */
final class Committing {

	private final Path root;
	private final Repository repository;
	/** The paths that are the archive's. */
	private final Predicate<String> mine;

	Committing(Path root, Repository repository, Predicate<String> mine) {
		this.root = root;
		this.repository = repository;
		this.mine = mine;
	}

	/**
	 * @param head   the commit before; null for the first
	 * @param other  a commit whose work the files hold as well; null where there is none
	 * @param files  the files by path, all that the commit is to have of the archive's
	 * @param signer null for a commit that is not to be signed
	 * @return the new commit; null if nothing has changed
	 * @throws ArchiveException where signing fails; nothing is committed then
	 */
	RevCommit commit(RevCommit head, RevCommit other, SortedMap<String, Path> files, String message, PersonIdent person,
			Signer signer)
			throws IOException {
		GitLocks locks = new GitLocks(root);
		locks.announce();
		try (ObjectInserter inserter = repository.newObjectInserter()) {
			SortedMap<String, DirCacheEntry> own = store(files, inserter);
			ObjectId tree = tree(head, other, own, inserter);
			boolean contained = other != null && new Ancestry(repository).isIn(other.name(), head.name());
			if (head != null && tree.equals(head.getTree().getId()) && (other == null || contained)) {
				updateIndex(own);
				return null;
			}
			if (other != null && tree.equals(other.getTree().getId())
					&& new Ancestry(repository).isIn(head.name(), other.name())) {
				inserter.flush();
				updateIndex(own);
				moveHead(head, other, message);
				return other;
			}
			CommitBuilder commit = new CommitBuilder();
			commit.setTreeId(tree);
			if (head != null) {
				commit.addParentId(head);
			}
			if (other != null && !contained) {
				commit.addParentId(other);
			}
			commit.setAuthor(person);
			commit.setCommitter(person);
			commit.setMessage(message);
			if (signer != null) {
				commit.setGpgSignature(signer.sign(commit.build(), person.getWhenAsInstant()));
			}
			ObjectId id = inserter.insert(commit);
			inserter.flush();
			// the index first: stopped between the two, Git shows changes to be committed, which the next save point commits
			updateIndex(own);
			moveHead(head, id, message);
			return commits().read(id);
		} catch (LockFailedException e) {
			throw new ArchiveException(Words.bind(Messages.Committing_noSavePointWasMade, e.getFile()),
					Messages.Committing_waitForItIfNone, e);
		} finally {
			locks.withdraw();
		}
	}

	private SortedMap<String, DirCacheEntry> store(Map<String, Path> files, ObjectInserter inserter)
			throws IOException {
		SortedMap<String, DirCacheEntry> entries = new TreeMap<>();
		WorkBlobs blobs = new WorkBlobs(repository);
		for (Map.Entry<String, Path> file : files.entrySet()) {
			ObjectId blob = blobs.of(file.getKey(), file.getValue());
			if (!repository.getObjectDatabase().has(blob)) {
				try (InputStream in = Files.newInputStream(file.getValue())) {
					blob = inserter.insert(Constants.OBJ_BLOB, Files.size(file.getValue()), in);
				}
			}
			entries.put(file.getKey(), WorkBlobs.entry(file.getKey(), file.getValue(), blob));
		}
		return entries;
	}

	/** Files that are not the archive's are as in the commit before, or as in the other where only that one has changed them. */
	private ObjectId tree(RevCommit head, RevCommit other, SortedMap<String, DirCacheEntry> own,
			ObjectInserter inserter) throws IOException {
		SortedMap<String, DirCacheEntry> entries = foreign(head);
		if (other != null) {
			List<Commit> bases = new Ancestry(repository).bases(head.name(), other.name());
			SortedMap<String, DirCacheEntry> before = foreign(
					bases.isEmpty() ? null : commits().read(ObjectId.fromString(bases.get(0).id())));
			SortedMap<String, DirCacheEntry> theirs = foreign(other);
			SortedSet<String> paths = new TreeSet<>(before.keySet());
			paths.addAll(theirs.keySet());
			for (String path : paths) {
				if (isSame(entries.get(path), before.get(path)) && !isSame(theirs.get(path), before.get(path))) {
					entries.remove(path);
					if (theirs.containsKey(path)) {
						entries.put(path, theirs.get(path));
					}
				}
			}
		}
		DirCache cache = DirCache.newInCore();
		DirCacheBuilder builder = cache.builder();
		entries.values().forEach(builder::add);
		own.values().forEach(builder::add);
		builder.finish();
		return cache.writeTree(inserter);
	}

	private static boolean isSame(DirCacheEntry one, DirCacheEntry other) {
		return one == null || other == null ? one == other
				: one.getObjectId().equals(other.getObjectId()) && one.getRawMode() == other.getRawMode();
	}

	/** Entries of a commit that are not the archive's. */
	private SortedMap<String, DirCacheEntry> foreign(RevCommit commit) throws IOException {
		SortedMap<String, DirCacheEntry> entries = new TreeMap<>();
		if (commit != null) {
			try (TreeWalk walk = new TreeWalk(repository)) {
				walk.addTree(commit.getTree());
				walk.setRecursive(true);
				while (walk.next()) {
					if (!mine.test(walk.getPathString())) {
						DirCacheEntry entry = new DirCacheEntry(walk.getPathString());
						entry.setFileMode(walk.getFileMode());
						entry.setObjectId(walk.getObjectId(0));
						entries.put(walk.getPathString(), entry);
					}
				}
			}
		}
		return entries;
	}

	private Commits commits() {
		return new Commits(repository);
	}

	private void updateIndex(SortedMap<String, DirCacheEntry> own) throws IOException {
		DirCache index = WorkBlobs.locked(repository);
		try {
			DirCacheBuilder builder = index.builder();
			for (int i = 0; i < index.getEntryCount(); i++) {
				if (!mine.test(index.getEntry(i).getPathString())) {
					builder.add(index.getEntry(i));
				}
			}
			own.values().forEach(builder::add);
			builder.finish();
			index.write();
			if (!index.commit()) {
				throw new ArchiveException(Messages.Committing_noSavePointWasMade2,
						Messages.Committing_tryAgain);
			}
		} finally {
			index.unlock();
		}
	}

	private void moveHead(ObjectId before, ObjectId after, String message) throws IOException {
		for (String log : List.of("HEAD", repository.getFullBranch())) {
			keepToItself(repository.getDirectory().toPath().resolve("logs").resolve(log));
		}
		RefUpdate update = repository.updateRef(Constants.HEAD);
		update.setNewObjectId(after);
		update.setExpectedOldObjectId(before == null ? ObjectId.zeroId() : before);
		update.setRefLogMessage(Words.bind(Messages.Committing_commit, message.lines().findFirst().orElse("")),
				false);
		RefUpdate.Result result = update.update();
		if (result != RefUpdate.Result.NEW && result != RefUpdate.Result.FAST_FORWARD) {
			throw new ArchiveException(Words.bind(Messages.Committing_noSavePointWasMade3, result),
					Messages.Committing_openTheArchiveAgainLook);
		}
	}

	/** The logs are written on, which would show in every other name that the file has. */
	private static void keepToItself(Path file) throws IOException {
		if (Places.isFile(file) && Files.getFileStore(file).supportsFileAttributeView("unix")
				&& (Integer) Files.getAttribute(file, "unix:nlink", LinkOption.NOFOLLOW_LINKS) > 1) {
			Path copy = Files.createTempFile(file.getParent(), "log", null);
			Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
			Files.move(copy, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
		}
	}
}
