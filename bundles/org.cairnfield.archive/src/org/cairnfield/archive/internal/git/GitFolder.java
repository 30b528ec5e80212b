package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

import org.cairnfield.archive.fault.ArchiveException;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.AmbiguousObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryState;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevSort;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * The Git repository of one folder. Bytes go in and come out as they are: no line ends are changed and no filters are run,
 * whatever Git is configured to do.
 */
public final class GitFolder implements AutoCloseable {

	private static final String BRANCH = "main";

	private final Path root;
	private final Repository repository;

	private GitFolder(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
	}

	/** Makes the folder a repository without commits. */
	public static GitFolder init(Path root) throws IOException {
		Repository repository = builder(root).build();
		repository.create();
		// until the first commit this is all that names the branch
		repository.updateRef(Constants.HEAD).link(Constants.R_HEADS + BRANCH);
		StoredConfig config = repository.getConfig();
		config.setString("core", null, "autocrlf", "false");
		config.save();
		return new GitFolder(root, lasting(repository));
	}

	/** Opens the repository of the folder. */
	public static GitFolder open(Path root) throws IOException {
		try {
			return new GitFolder(root, lasting(builder(root).setMustExist(true).build()));
		} catch (IOException | RuntimeException e) {
			throw new ArchiveException("the history in " + root.resolve(Constants.DOT_GIT) + " can not be opened: " + e.getMessage(),
					"look with git fsck what is wrong with it", e);
		}
	}

	/** What is written survives a loss of power. Set here and not in the file, where newer Gits complain about the words. */
	private static Repository lasting(Repository repository) {
		repository.getConfig().setBoolean("core", null, "fsyncObjectFiles", true);
		repository.getConfig().setBoolean("core", null, "fsyncRefFiles", true);
		return repository;
	}

	private static FileRepositoryBuilder builder(Path root) {
		return new FileRepositoryBuilder().setWorkTree(root.toFile()).setGitDir(root.resolve(Constants.DOT_GIT).toFile());
	}

	@Override
	public void close() {
		repository.close();
	}

	/** The commit that the folder was last at; null before the first. */
	public Commit head() throws IOException {
		ObjectId head = repository.resolve(Constants.HEAD);
		return head == null ? null : commit(head);
	}

	/** The branch that commits go to; null if they go to none. */
	public String branch() throws IOException {
		Ref head = repository.exactRef(Constants.HEAD);
		return head != null && head.isSymbolic() ? Repository.shortenRefName(head.getTarget().getName()) : null;
	}

	private Commit commit(ObjectId id) throws IOException {
		try (RevWalk walk = new RevWalk(repository)) {
			return commit(walk.parseCommit(id));
		}
	}

	static Commit commit(RevCommit commit) {
		PersonIdent author = commit.getAuthorIdent();
		List<String> parents = new ArrayList<>();
		for (RevCommit parent : commit.getParents()) {
			parents.add(parent.name());
		}
		return new Commit(commit.name(), author.getName(), author.getEmailAddress(), author.getWhenAsInstant(),
				commit.getFullMessage(), List.copyOf(parents));
	}

	/** Commits from the present one back, each before its parents whatever their clocks said. */
	public List<Commit> log(int most) throws IOException {
		List<Commit> commits = new ArrayList<>();
		ObjectId head = repository.resolve(Constants.HEAD);
		if (head == null) {
			return commits;
		}
		try (RevWalk walk = new RevWalk(repository)) {
			walk.sort(RevSort.TOPO);
			walk.markStart(walk.parseCommit(head));
			for (RevCommit commit = walk.next(); commit != null && commits.size() < most; commit = walk.next()) {
				commits.add(commit(commit));
			}
		}
		return commits;
	}

	/**
	 * The commit that a text names: an id, the beginning of one, a branch, a tag, or {@code HEAD~2}.
	 *
	 * @throws ArchiveException if it names none or several
	 */
	public Commit find(String name) throws IOException {
		try {
			ObjectId id = repository.resolve(name + "^{commit}");
			if (id != null) {
				return commit(id);
			}
			throw new ArchiveException("the history has no state '" + name + "'", "look at the list of save points");
		} catch (AmbiguousObjectException e) {
			throw new ArchiveException("'" + name + "' is the beginning of several ids", "give more digits", e);
		} catch (MissingObjectException | IncorrectObjectTypeException | IllegalArgumentException e) {
			throw new ArchiveException("the history has no state '" + name + "'", "look at the list of save points", e);
		}
	}

	/** The files of a commit, or none at all for null. */
	public TreeFiles files(Commit commit, Predicate<String> wanted) throws IOException {
		if (commit == null) {
			return new TreeFiles(repository, null, wanted);
		}
		try (RevWalk walk = new RevWalk(repository)) {
			return new TreeFiles(repository, walk.parseCommit(ObjectId.fromString(commit.id())).getTree(), wanted);
		}
	}

	/** What Git calls the contents of files in the folder, by path. */
	public SortedMap<String, String> blobs(Map<String, Path> files) throws IOException {
		SortedMap<String, String> names = new TreeMap<>();
		WorkBlobs blobs = new WorkBlobs(repository);
		for (Map.Entry<String, Path> file : files.entrySet()) {
			names.put(file.getKey(), blobs.of(file.getKey(), file.getValue()).name());
		}
		return names;
	}

	/** The annotated tags on commits, in the order of their names. */
	public List<Tag> tags() throws IOException {
		return new Tags(root, repository).all();
	}

	/** The annotated tag of a name, null where there is none; see {@link Tags#find}. */
	public Tag tag(String name) throws IOException {
		return new Tags(root, repository).find(name);
	}

	/** Makes an annotated tag; see {@link Tags#make}. */
	public Tag tag(String name, Commit commit, String message, String person, String email, Instant time) throws IOException {
		return new Tags(root, repository).make(name, commit, message, person, email, time);
	}

	/** Whether there is a tag of a name, of whatever kind. */
	public boolean hasTag(String name) {
		return new Tags(root, repository).exists(name);
	}

	/** For a look through the whole repository. */
	public GitAudit audit() {
		return new GitAudit(root, repository);
	}

	/** Removes what an interrupted commit of ours has left in the way. Needs the lock of the folder. */
	public void recover() throws IOException {
		GitLocks.clear(root, repository);
	}

	/** Why no commit can be made now; null if one can. */
	public String obstacle() {
		RepositoryState state = repository.getRepositoryState();
		if (!state.canCommit() || state == RepositoryState.MERGING || state == RepositoryState.MERGING_RESOLVED) {
			return "Git is in the middle of something here: " + state.getDescription();
		}
		for (Path lock : GitLocks.in(repository)) {
			if (Files.exists(lock)) {
				return "Git is at work here, or ended in the middle of it: " + root.relativize(lock) + " exists";
			}
		}
		return null;
	}

	/**
	 * Commits files as they are on disk. What the commit before has at other paths stays, and so does what somebody has
	 * added to the index there.
	 *
	 * @param files the files by path, all that the commit is to have below the wanted paths
	 * @param mine  the paths that are the archive's
	 * @return the new commit; null if nothing has changed
	 */
	public Commit commit(SortedMap<String, Path> files, Predicate<String> mine, String message, String author, String email,
			Instant time) throws IOException {
		GitLocks locks = new GitLocks(root, repository);
		locks.announce();
		try (ObjectInserter inserter = repository.newObjectInserter()) {
			ObjectId head = repository.resolve(Constants.HEAD);
			SortedMap<String, DirCacheEntry> own = store(files, inserter);
			ObjectId tree = tree(head, own, mine, inserter);
			if (head != null && tree.equals(treeOf(head))) {
				updateIndex(own, mine);
				return null;
			}
			PersonIdent person = new PersonIdent(author, email, time, ZoneOffset.UTC);
			CommitBuilder commit = new CommitBuilder();
			commit.setTreeId(tree);
			if (head != null) {
				commit.setParentId(head);
			}
			commit.setAuthor(person);
			commit.setCommitter(person);
			commit.setMessage(message);
			ObjectId id = inserter.insert(commit);
			inserter.flush();
			// the index first: stopped between the two, Git shows changes to be committed, which the next save point commits
			updateIndex(own, mine);
			moveHead(head, id, message);
			return commit(id);
		} catch (LockFailedException e) {
			throw new ArchiveException("no save point was made, as another Git is at work: " + e.getFile() + " exists",
					"wait for it; if none is running, delete that file", e);
		} finally {
			locks.withdraw();
		}
	}

	private ObjectId treeOf(ObjectId commit) throws IOException {
		try (RevWalk walk = new RevWalk(repository)) {
			return walk.parseCommit(commit).getTree().getId();
		}
	}

	private SortedMap<String, DirCacheEntry> store(Map<String, Path> files, ObjectInserter inserter) throws IOException {
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

	private ObjectId tree(ObjectId head, SortedMap<String, DirCacheEntry> own, Predicate<String> mine, ObjectInserter inserter)
			throws IOException {
		DirCache cache = DirCache.newInCore();
		DirCacheBuilder builder = cache.builder();
		if (head != null) {
			try (TreeWalk walk = new TreeWalk(repository)) {
				walk.addTree(treeOf(head));
				walk.setRecursive(true);
				while (walk.next()) {
					if (!mine.test(walk.getPathString())) {
						DirCacheEntry entry = new DirCacheEntry(walk.getPathString());
						entry.setFileMode(walk.getFileMode());
						entry.setObjectId(walk.getObjectId(0));
						builder.add(entry);
					}
				}
			}
		}
		own.values().forEach(builder::add);
		builder.finish();
		return cache.writeTree(inserter);
	}

	private void updateIndex(SortedMap<String, DirCacheEntry> own, Predicate<String> mine) throws IOException {
		DirCache index = repository.lockDirCache();
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
				throw new ArchiveException("no save point was made, as the index of Git could not be written", "try again");
			}
		} finally {
			index.unlock();
		}
	}

	private void moveHead(ObjectId before, ObjectId after, String message) throws IOException {
		RefUpdate update = repository.updateRef(Constants.HEAD);
		update.setNewObjectId(after);
		update.setExpectedOldObjectId(before == null ? ObjectId.zeroId() : before);
		update.setRefLogMessage("commit: " + message.lines().findFirst().orElse(""), false);
		RefUpdate.Result result = update.update();
		if (result != RefUpdate.Result.NEW && result != RefUpdate.Result.FAST_FORWARD) {
			throw new ArchiveException("no save point was made, as another Git was faster (" + result + ")",
					"open the archive again, look at its history, and try again");
		}
	}
}
