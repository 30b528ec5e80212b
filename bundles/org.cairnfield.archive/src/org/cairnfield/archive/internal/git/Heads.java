package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.internal.disk.Intended;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * Finds the present commit. A branch or a HEAD that is lost or damaged is never taken for a history that has not begun:
 * the next save point would begin another one.
 */
final class Heads {

	private static final String GIT = Constants.DOT_GIT + '/';

	private final Path root;
	private final Repository repository;
	private final Commits commits;

	Heads(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
		this.commits = new Commits(repository);
	}

	/**
	 * The present commit; null before the first.
	 *
	 * @throws DamagedException naming the file and, where the log of Git knows it, the line to be put back
	 */
	RevCommit present() throws IOException {
		HeadTrace trace = HeadTrace.of(root);
		if (trace.broken() != null) {
			throw damaged(trace.broken(), trace.reason(),
					trace.broken().equals(GIT + "HEAD") ? headLine() : line(trace.broken()), null);
		}
		if (trace.id() == null) {
			requireUnborn(trace);
			return null;
		}
		RevCommit present;
		String file = trace.branch() == null ? GIT + "HEAD" : GIT + trace.branch();
		try {
			present = commits.read(ObjectId.fromString(trace.id()));
		} catch (DamagedException e) {
			throw damaged(file,
					Words.bind(Messages.Heads_namesTheCommitWhichCannot, trace.id(), e.damages().get(0).reason()),
					trace.branch() == null ? headLine() : line(file), e);
		}
		if (!trace.loose()) {
			requireLatest(trace, file);
		}
		return present;
	}

	/** A branch that lost its file falls back to where references were last packed, silently. Its log knows better. */
	private void requireLatest(HeadTrace trace, String file) throws IOException {
		List<String> log = HeadTrace.logged(root, trace.branch());
		if (!log.isEmpty() && !log.get(0).equals(trace.id()) && isWhole(log.get(0)) && !isInterrupted(trace.id())) {
			throw damaged(file, Messages.Heads_isMissingAndGitPacked, line(file),
					null);
		}
	}

	private void requireUnborn(HeadTrace trace) throws IOException {
		if (isInterrupted(null)) {
			return; // the first save point was being made
		}
		if (!HeadTrace.logged(root, "HEAD").isEmpty() || hasReferences() || hasCommits()) {
			String file = GIT + trace.branch();
			throw damaged(file, Messages.Heads_isMissingAlthoughThereIs, line(file), null);
		}
	}

	/** Whether a save point of ours after a commit, or the first for null, was being made when the program ended. */
	private boolean isInterrupted(String before) throws IOException {
		Intended intended = Intended.read(root);
		return intended != null && intended.comesAfter(before);
	}

	private List<Ref> references(String prefix) {
		try {
			return repository.getRefDatabase().getRefsByPrefix(prefix);
		} catch (IOException | RuntimeException e) {
			return List.of(); // one that is damaged hides the others
		}
	}

	private boolean hasReferences() {
		try {
			return repository.getRefDatabase().getRefsByPrefix(Constants.R_REFS).stream()
					.anyMatch(ref -> ref.getObjectId() != null);
		} catch (IOException | RuntimeException e) {
			return true; // damaged, so there was one
		}
	}

	/** Looks at objects one by one until there is one; asked only where neither logs nor references know of any. */
	private boolean hasCommits() throws IOException {
		Path objects = repository.getDirectory().toPath().resolve("objects");
		if (HeadTrace.hasPacks(objects)) {
			return true;
		}
		try (DirectoryStream<Path> folders = Files.newDirectoryStream(objects, "[0-9a-f][0-9a-f]")) {
			for (Path folder : folders) {
				try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
					for (Path file : files) {
						if (isCommit(folder.getFileName() + file.getFileName().toString())) {
							return true;
						}
					}
				}
			}
		}
		return false;
	}

	private boolean isCommit(String id) {
		try {
			ObjectLoader loader = repository.open(ObjectId.fromString(id));
			return loader.getType() == Constants.OBJ_COMMIT;
		} catch (IOException | RuntimeException e) {
			return false; // neither an object nor a whole one
		}
	}

	/** What to do about HEAD. */
	private String headLine() throws IOException {
		List<Ref> refs = references(Constants.R_HEADS);
		String latest = latestWhole("HEAD");
		List<Ref> atLatest = refs.stream()
				.filter(ref -> ref.getObjectId() != null && ref.getObjectId().name().equals(latest)).toList();
		List<String> branches = (atLatest.isEmpty() ? refs : atLatest).stream().map(Ref::getName).toList();
		return branches.isEmpty() ? Messages.Heads_lookWithGitFsckLost
				: Words.bind(Messages.Heads_putTheLineIntoGit, HeadTrace.SYMBOLIC, branches.get(0),
						branches.size() > 1
								? Words.bind(Messages.Heads_orTheBranchThatIs, String.join(", ", branches))
								: "");
	}

	/** What to do about the file of a branch, or about a HEAD that names a commit. */
	private String line(String file) throws IOException {
		String id = latestWhole(file.substring(GIT.length()));
		if (id == null) {
			return Words.bind(Messages.Heads_lookWithGitFsckLost2, file);
		}
		Commit commit = commits.plain(commits.read(ObjectId.fromString(id)));
		String summary = Places.shown(commit.message().lines().findFirst().orElse(""));
		return Words.bind(Messages.Heads_putTheLineIntoThe, id, file, commit.author(), commit.time(), summary);
	}

	/** The last state of a reference, otherwise of HEAD, of which commit and files can be read; null where there is none. */
	private String latestWhole(String reference) throws IOException {
		List<String> ids = new ArrayList<>(HeadTrace.logged(root, reference));
		ids.addAll(HeadTrace.logged(root, "HEAD"));
		for (String id : ids) {
			if (isWhole(id)) {
				return id;
			}
		}
		return null;
	}

	private boolean isWhole(String id) {
		try (TreeWalk walk = new TreeWalk(repository)) {
			walk.addTree(commits.read(ObjectId.fromString(id)).getTree());
			walk.setRecursive(true);
			while (walk.next()) {
				if (!repository.getObjectDatabase().has(walk.getObjectId(0))) {
					return false;
				}
			}
			return true;
		} catch (IOException | RuntimeException e) {
			return false;
		}
	}

	private DamagedException damaged(String file, String reason, String remedy, Exception cause) {
		Damage damage = new Damage(file, 0, reason, remedy);
		return new DamagedException(Words.bind(Messages.Heads_theHistoryOfIsDamaged, root, file, reason), remedy,
				List.of(damage), cause);
	}
}
