package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevSort;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import org.eclipse.jgit.treewalk.TreeWalk;

/** Looks through a whole repository, believing as little of it as can be. */
public final class GitAudit {

	private final Path root;
	private final Repository repository;
	private final RefFiles refs;
	private final ObjectCheck objects;
	private final Map<String, SortedMap<String, String>> folders = new HashMap<>();

	GitAudit(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
		refs = RefFiles.of(repository);
		objects = new ObjectCheck(repository);
	}

	/** What is wrong with HEAD, references, the index, objects and packs; empty if nothing is. Reads every byte of them. */
	public List<String> problems() {
		List<String> problems = new ArrayList<>();
		refs.problems().forEach((name, problem) -> problems.add(name + ": " + problem));
		String index = indexProblem();
		if (index != null) {
			problems.add(Words.bind(Messages.GitAudit_index, index));
		}
		problems.addAll(objects.ofAllBehind(refs.ids()));
		problems.addAll(objects.ofFiles());
		return problems.stream().distinct().toList();
	}

	/** Why the index cannot be read; null if it can. */
	public String indexProblem() {
		try {
			repository.readDirCache();
			return null;
		} catch (IOException | RuntimeException e) {
			return Words.bind(Messages.GitAudit_cannotBeRead, e.getMessage());
		}
	}

	/** Whether earlier commits were left out when the repository was cloned. */
	public boolean isShallow() throws IOException {
		return !repository.getObjectDatabase().getShallowCommits().isEmpty();
	}

	/** What keeps tags from being an annotated tag on a commit, by name. */
	public SortedMap<String, String> tagTroubles() {
		return new Tags(root, repository).troubles();
	}

	/** What is wrong with the objects of a tagged state, their names computed from their content; empty if nothing is. */
	public List<String> problemsOf(Tag tag) {
		return objects.of(tag);
	}

	/** Checks the signature of a tag as the user's Git is configured. */
	public Signature signature(Tag tag) throws IOException {
		return new SignatureCheck(UserGit.of(root)).of(new Tags(root, repository).raw(tag.id()), tag.time());
	}

	/**
	 * Checks the signature of a commit.
	 *
	 * @param list whose key is whose; null for what the user's Git is configured to
	 */
	public Signature signature(Commit commit, SignerList list) throws IOException {
		try (RevWalk walk = new RevWalk(repository)) {
			RevCommit found = walk.parseCommit(ObjectId.fromString(commit.id()));
			return new SignatureCheck(UserGit.of(root), list).of(SignedObject.ofCommit(found.getRawBuffer()),
					found.getCommitterIdent().getWhenAsInstant());
		}
	}

	/** Whether a commit carries a signature, whatever that is worth. */
	public boolean isSigned(Commit commit) throws IOException {
		try (RevWalk walk = new RevWalk(repository)) {
			return SignedObject.ofCommit(walk.parseCommit(ObjectId.fromString(commit.id())).getRawBuffer()).isSigned();
		}
	}

	/** All commits that HEAD, branches and tags reach, each after those that it came from. */
	public List<Commit> commits() throws IOException {
		return walk(refs.ids().values());
	}

	/** A commit and all that it came from, each after those that it came from. */
	public List<Commit> history(Commit last) throws IOException {
		return walk(List.of(ObjectId.fromString(last.id())));
	}

	/** The last commits that two came from; several where their lines have crossed. */
	public List<Commit> bases(Commit one, Commit other) throws IOException {
		List<Commit> bases = new ArrayList<>();
		try (RevWalk walk = new RevWalk(repository)) {
			walk.setRevFilter(RevFilter.MERGE_BASE);
			walk.markStart(walk.parseCommit(ObjectId.fromString(one.id())));
			walk.markStart(walk.parseCommit(ObjectId.fromString(other.id())));
			for (RevCommit commit : walk) {
				bases.add(GitFolder.commit(commit));
			}
		}
		return bases;
	}

	/** Ids of the commits that HEAD and branches reach, those of other repositories included. */
	public Set<String> onBranches() throws IOException {
		Set<String> ids = new HashSet<>();
		List<ObjectId> starts = refs.ids().entrySet().stream().filter(ref -> !ref.getKey().startsWith(Constants.R_TAGS))
				.map(Map.Entry::getValue).toList();
		walk(starts).forEach(commit -> ids.add(commit.id()));
		return ids;
	}

	private List<Commit> walk(Iterable<ObjectId> starts) throws IOException {
		List<Commit> commits = new ArrayList<>();
		try (RevWalk walk = new RevWalk(repository)) {
			walk.sort(RevSort.TOPO);
			walk.sort(RevSort.REVERSE, true);
			for (ObjectId start : starts) {
				if (walk.peel(walk.parseAny(start)) instanceof RevCommit commit) {
					walk.markStart(commit);
				}
			}
			for (RevCommit commit : walk) {
				commits.add(GitFolder.commit(commit));
			}
		}
		return commits;
	}

	/** Git's names of the contents of the files right in a folder of a commit, by path; empty where it has no such folder. */
	public SortedMap<String, String> filesIn(String folder, Commit commit) throws IOException {
		try (RevWalk walk = new RevWalk(repository);
				TreeWalk found = TreeWalk.forPath(repository, folder,
						walk.parseCommit(ObjectId.fromString(commit.id())).getTree())) {
			if (found == null || found.getFileMode() != FileMode.TREE) {
				return new TreeMap<>();
			}
			ObjectId tree = found.getObjectId(0);
			SortedMap<String, String> known = folders.get(folder + '/' + tree.name());
			if (known == null) {
				known = new TreeMap<>();
				try (TreeWalk files = new TreeWalk(repository)) {
					files.addTree(tree);
					while (files.next()) {
						known.put(folder + '/' + files.getPathString(), files.getObjectId(0).name());
					}
				}
				folders.put(folder + '/' + tree.name(), known);
			}
			return known;
		}
	}

	/** Git's names of the contents of all files of a commit, by path. */
	public SortedMap<String, String> files(Commit commit) throws IOException {
		SortedMap<String, String> found = new TreeMap<>();
		try (RevWalk walk = new RevWalk(repository); TreeWalk files = new TreeWalk(repository)) {
			files.addTree(walk.parseCommit(ObjectId.fromString(commit.id())).getTree());
			files.setRecursive(true);
			while (files.next()) {
				found.put(files.getPathString(), files.getObjectId(0).name());
			}
		}
		return found;
	}

	/** The bytes of a file by Git's name of its content. */
	public byte[] content(String blob) throws IOException {
		return repository.open(ObjectId.fromString(blob), Constants.OBJ_BLOB).getBytes();
	}
}
