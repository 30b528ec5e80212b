package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.GitEnclosure;
import org.cairnfield.archive.internal.disk.GitUnderway;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.AmbiguousObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryState;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

/**
 * The Git repository of one folder. Bytes go in and come out as they are: no line ends are changed and no filters are run,
 * whatever Git is configured to do.
 */
public final class GitFolder implements AutoCloseable {

	private static final String BRANCH = "main";

	private final Path root;
	private final Repository repository;
	private final Heads heads;
	private final Commits commits;

	private GitFolder(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
		this.heads = new Heads(root, repository);
		this.commits = new Commits(repository);
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

	/**
	 * Opens the repository of the folder.
	 *
	 * @throws ArchiveException where it cannot be opened, or leads out of the archive
	 */
	public static GitFolder open(Path root) throws IOException {
		requireEnclosed(root);
		try {
			return new GitFolder(root, lasting(builder(root).setMustExist(true).build()));
		} catch (IOException | RuntimeException e) {
			Damage damage = new Damage(Constants.DOT_GIT, 0,
					Words.bind(Messages.GitFolder_canNotBeOpened, e.getMessage()),
					Messages.GitFolder_lookWithGitFsckWhat);
			throw new DamagedException(
					Words.bind(Messages.GitFolder_theHistoryOfIsDamaged, root, damage.file(), damage.reason()),
					damage.remedy(), List.of(damage), e);
		}
	}

	/**
	 * Passes a folder whose Git folder leads nowhere else, without opening it.
	 *
	 * @throws ArchiveException naming what leads out
	 */
	public static void requireEnclosed(Path root) throws IOException {
		GitEnclosure.require(root);
		OwnConfig.require(root);
	}

	/**
	 * What is written survives a loss of power, and each move of a branch is logged. Set here and not in the file, where newer
	 * Gits complain about the words. Parents are taken from commits, not from a graph kept beside them, which nothing vouches for.
	 */
	private static Repository lasting(Repository repository) {
		StoredConfig config = repository.getConfig();
		OwnConfig.disarm(config);
		config.setBoolean("core", null, "fsyncObjectFiles", true);
		config.setBoolean("core", null, "fsyncRefFiles", true);
		config.setBoolean("core", null, "logAllRefUpdates", true);
		config.setBoolean("core", null, "commitGraph", false);
		config.setInt("gc", null, "auto", 0); // packed when the archive is closed, not while others are fetched
		return repository;
	}

	private static FileRepositoryBuilder builder(Path root) {
		return new FileRepositoryBuilder().setWorkTree(root.toFile())
				.setGitDir(root.resolve(Constants.DOT_GIT).toFile());
	}

	@Override
	public void close() {
		repository.close();
	}

	/**
	 * The commit that the folder was last at; null before the first.
	 *
	 * @throws DamagedException where it cannot be told, so that no history is taken for a new one
	 */
	public Commit head() throws IOException {
		RevCommit head = heads.present();
		return head == null ? null : commits.plain(head);
	}

	/** The branch that commits go to; null if they go to none. */
	public String branch() throws IOException {
		String branch = HeadTrace.of(root).branch();
		return branch == null ? null : Repository.shortenRefName(branch);
	}

	/** A commit that was read by a walk. */
	static Commit commit(RevCommit commit) {
		return Commits.whole(commit);
	}

	private Commit commit(ObjectId id) throws IOException {
		return commits.plain(commits.read(id));
	}

	/**
	 * Commits from the present one back, each before its parents whatever their clocks said, and what of them cannot be read.
	 *
	 * @throws DamagedException where there is no telling which is the present one
	 */
	public Log log(int most) throws IOException {
		RevCommit head = heads.present();
		return head == null ? new Log(List.of(), List.of()) : commits.log(head.getId(), most);
	}

	/**
	 * The commit that a text names: an id, the beginning of one, a branch, a tag, or {@code HEAD~2}.
	 *
	 * @throws ArchiveException if it names none or several
	 */
	public Commit find(String name) throws IOException {
		if (name.startsWith(Constants.HEAD) || name.startsWith("@")) {
			heads.present(); // a damaged one names nothing, or the wrong commit
		}
		try {
			ObjectId id = repository.resolve(name + "^{commit}");
			if (id != null) {
				return commit(id);
			}
			throw new ArchiveException(Words.bind(Messages.GitFolder_theHistoryHasNoState, name),
					Messages.GitFolder_lookAtTheListOf);
		} catch (AmbiguousObjectException e) {
			throw new ArchiveException(Words.bind(Messages.GitFolder_isTheBeginningOfSeveral, name),
					Messages.GitFolder_giveMoreDigits, e);
		} catch (MissingObjectException | IncorrectObjectTypeException | IllegalArgumentException e) {
			throw new ArchiveException(Words.bind(Messages.GitFolder_theHistoryHasNoState, name),
					Messages.GitFolder_lookAtTheListOf, e);
		} catch (ArchiveException e) {
			throw e;
		} catch (IOException | RuntimeException e) {
			throw Commits.damaged(name, Words.bind(Messages.GitFolder_whatNamesCannotBeRead, name, e.getMessage()),
					e);
		}
	}

	/** The files of a commit, or none at all for null. */
	public TreeFiles files(Commit commit, Predicate<String> wanted) throws IOException {
		if (commit == null) {
			return new TreeFiles(repository, null, wanted);
		}
		return new TreeFiles(repository, commits.read(ObjectId.fromString(commit.id())).getTree(), wanted);
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
	public List<Tag> tags() {
		return new Tags(root, repository).all();
	}

	/** The annotated tag of a name, null where there is none; see {@link Tags#find}. */
	public Tag tag(String name) throws IOException {
		return new Tags(root, repository).find(name);
	}

	/** Makes an annotated tag; see {@link Tags#make}. */
	public Tag tag(String name, Commit commit, String message, String person, String email, Instant time)
			throws IOException {
		return new Tags(root, repository).make(name, commit, message, person, email, time);
	}

	/** Whether there is a tag of a name, of whatever kind. */
	public boolean hasTag(String name) {
		return new Tags(root, repository).exists(name);
	}

	/** Brings files that are not the archive's from one commit to the other, where nobody has changed them in the folder. */
	public void checkOutOthers(Commit before, Commit after, Predicate<String> mine) throws IOException {
		new CheckOut(root, repository, mine.negate()).move(commits.read(ObjectId.fromString(before.id())),
				commits.read(ObjectId.fromString(after.id())));
	}

	/** Fills a new folder with the files of a commit, which becomes the present one of a branch. */
	public void fill(String branch, Commit commit) throws IOException {
		repository.updateRef(Constants.HEAD).link(Constants.R_HEADS + branch);
		RevCommit present = commits.read(ObjectId.fromString(commit.id()));
		new CheckOut(root, repository, path -> true).move(null, present);
		RefUpdate update = repository.updateRef(Constants.HEAD);
		update.setNewObjectId(present);
		update.setExpectedOldObjectId(ObjectId.zeroId());
		update.setRefLogMessage("copy", false);
		update.update();
	}

	/** How commits follow from each other. */
	public Ancestry ancestry() {
		return new Ancestry(repository);
	}

	/** The repository that the archive is exchanged with, or may be. */
	public GitRemote remote(RemoteUrl url) {
		return new GitRemote(root, repository, url);
	}

	/** @param theirs ids of the tags that the remote has, by name */
	public TagExchange tagExchange(SortedMap<String, String> theirs) {
		return new TagExchange(root, repository, theirs);
	}

	/** Connects the archive with a remote; what was known of another is forgotten. A folder that is not there is made one. */
	public void connect(RemoteUrl url, String branch) throws IOException {
		if (url.folder() != null) {
			BareFolder.prepare(url.folder());
		}
		remote(url).forget(branch);
		Remotes.set(root, url, branch);
	}

	/** For a look through the whole repository. */
	public GitAudit audit() {
		return new GitAudit(root, repository);
	}

	/** Whether it is time to put what earlier states have left into one pack, and no other Git is at work; see {@link Repack}. */
	public boolean isRepackDue() throws IOException {
		return new Repack(root, repository).isDue() && obstacle() == null
				&& GitLocks.present(root, repository).isEmpty();
	}

	/** Does so. Needs the lock of the folder. */
	public void repack(Progress progress) throws IOException {
		new Repack(root, repository).run(progress);
	}

	/** Removes what an interrupted commit of ours has left in the way. Needs the lock of the folder. */
	public void recover() throws IOException {
		GitLocks.clear(root, repository);
	}

	/**
	 * Why no commit can be made now.
	 *
	 * @param what   what stands in the way
	 * @param remedy what a person can do, before trying again
	 */
	public record Obstacle(String what, String remedy) {
	}

	/** Why no commit can be made now; null if one can. */
	public Obstacle obstacle() throws IOException {
		Optional<GitUnderway> underway = GitUnderway.in(root);
		if (underway.isPresent()) {
			return new Obstacle(underway.get().reason(), underway.get().remedy());
		}
		RepositoryState state = state();
		if (!state.canCommit()) {
			return new Obstacle(Words.bind(Messages.GitFolder_gitIsInTheMiddle, state.getDescription()),
					Messages.GitFolder_finishThatWithGit);
		}
		for (Path lock : GitLocks.in(root, repository)) {
			if (Files.exists(lock, LinkOption.NOFOLLOW_LINKS)) {
				return new Obstacle(
						Words.bind(Messages.GitFolder_gitIsAtWorkHere, root.relativize(lock)),
						Messages.GitFolder_finishThatWithGit);
			}
		}
		HeadTrace head = HeadTrace.of(root);
		if (head.branch() == null && head.broken() == null) {
			return new Obstacle(
					Words.bind(Messages.GitFolder_headNamesTheCommitAnd, head.id().substring(0, 8)),
					Words.bind(Messages.GitFolder_goBackToTheBranch, BRANCH));
		}
		return null;
	}

	private RepositoryState state() throws IOException {
		try {
			return repository.getRepositoryState();
		} catch (RuntimeException e) {
			WorkBlobs.index(repository); // that it asks for the index is the one thing that can fail
			throw e;
		}
	}

	/**
	 * Commits files as they are on disk; see {@link Committing}.
	 *
	 * @param files the files by path, all that the commit is to have below the wanted paths
	 * @param mine  the paths that are the archive's
	 * @param with  a commit whose work they hold as well; null where there is none. Where the present commit is part of that
	 *              one and the files are as there, that one becomes the present commit
	 * @param sign  whether it is signed where the user's Git is configured to sign commits
	 * @return the new commit; null if nothing has changed
	 * @throws ArchiveException where signing fails; nothing is committed then
	 */
	public Commit commit(SortedMap<String, Path> files, Predicate<String> mine, String message, String author,
			String email,
			Instant time, String with, boolean sign) throws IOException {
		PersonIdent person = new PersonIdent(author, email, time, ZoneOffset.UTC);
		RevCommit other = with == null ? null : commits.read(ObjectId.fromString(with));
		Signer signer = sign ? Signer.ofCommits(UserGit.of(root)) : null;
		RevCommit made = new Committing(root, repository, mine).commit(heads.present(), other, files, message, person,
				signer);
		return made == null ? null : commits.plain(made);
	}
}
