package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;

/** Reads commits, and believes none whose content does not match its name. */
final class Commits {

	/** Where a commit cannot be read, so much of the history as can. */
	private static final String REMEDY = Messages.Commits_fetchTheObjectFromA;

	private final Repository repository;

	Commits(Repository repository) {
		this.repository = repository;
	}

	/** @throws DamagedException where the object is missing, or is not what was written */
	RevCommit read(ObjectId id) throws IOException {
		try (ObjectReader reader = repository.newObjectReader()) {
			return read(reader, id);
		}
	}

	private static RevCommit read(ObjectReader reader, ObjectId id) throws DamagedException {
		String reason;
		Exception cause = null;
		try {
			RevCommit commit = RevCommit.parse(reader.open(id, Constants.OBJ_COMMIT).getCachedBytes());
			if (commit.getId().equals(id) && commit.getAuthorIdent() != null && commit.getFullMessage() != null) {
				return commit;
			}
			reason = commit.getId().equals(id) ? Messages.Commits_namesNoAuthor : Messages.Commits_holdsSomethingElse;
		} catch (IOException | RuntimeException e) { // JGit's parsers stumble over what they do not expect
			reason = Words.bind(Messages.Commits_cannotBeRead, e.getMessage());
			cause = e;
		}
		throw damaged(id.name(), Words.bind(Messages.Commits_theCommit, reason), cause);
	}

	/** @param name of the object; where it is an id, the file is named that the object has unless it is in a pack */
	static DamagedException damaged(String name, String reason, Exception cause) {
		String file = ObjectId.isId(name) ? ".git/objects/" + name.substring(0, 2) + '/' + name.substring(2)
				: ".git/objects";
		return new DamagedException(Words.bind(Messages.Commits_theHistoryIsDamaged, file, reason), REMEDY,
				List.of(new Damage(file, 0, reason, REMEDY)), cause);
	}

	/** A commit, in the words of this package. */
	Commit plain(RevCommit commit) throws IOException {
		return plain(commit, parents(commit, repository.getObjectDatabase().getShallowCommits()));
	}

	/** With all parents, wherever the history ends. */
	static Commit whole(RevCommit commit) {
		return plain(commit, parents(commit, Set.of()));
	}

	private static Commit plain(RevCommit commit, List<ObjectId> parents) {
		PersonIdent author = commit.getAuthorIdent();
		return new Commit(commit.name(), author.getName(), author.getEmailAddress(), author.getWhenAsInstant(),
				commit.getFullMessage(), parents.stream().map(ObjectId::name).toList());
	}

	/**
	 * Commits from one back, each before its parents whatever their clocks said, otherwise the latest first. What cannot be
	 * read ends its line, and is told.
	 *
	 * @param most how many at most
	 */
	Log log(ObjectId start, int most) throws IOException {
		Map<ObjectId, RevCommit> found = new HashMap<>();
		Map<ObjectId, Integer> children = new HashMap<>();
		List<Damage> damages = new ArrayList<>();
		Set<ObjectId> beyond = new HashSet<>(repository.getObjectDatabase().getShallowCommits());
		try (ObjectReader reader = repository.newObjectReader()) {
			Deque<ObjectId> due = new ArrayDeque<>(List.of(start));
			Set<ObjectId> seen = new HashSet<>(due);
			while (!due.isEmpty()) {
				ObjectId id = due.remove();
				try {
					RevCommit commit = read(reader, id);
					found.put(id, commit);
					for (ObjectId parent : parents(commit, beyond)) {
						children.merge(parent, 1, Integer::sum);
						if (seen.add(parent)) {
							due.add(parent);
						}
					}
				} catch (DamagedException e) {
					damages.addAll(e.damages());
				}
			}
		}
		return new Log(inOrder(start, found, children, beyond, most), damages);
	}

	/** In a shallow clone the history ends at some commits, on purpose. */
	private static List<ObjectId> parents(RevCommit commit, Set<ObjectId> beyond) {
		List<ObjectId> parents = new ArrayList<>();
		if (!beyond.contains(commit.getId())) {
			for (RevCommit parent : commit.getParents()) {
				parents.add(parent.getId().copy());
			}
		}
		return parents;
	}

	private static List<Commit> inOrder(ObjectId start, Map<ObjectId, RevCommit> found, Map<ObjectId, Integer> children,
			Set<ObjectId> beyond, int most) {
		List<Commit> commits = new ArrayList<>();
		PriorityQueue<RevCommit> ready = new PriorityQueue<>(
				Comparator.comparingInt(RevCommit::getCommitTime).reversed());
		if (found.containsKey(start)) {
			ready.add(found.get(start));
		}
		while (!ready.isEmpty() && commits.size() < most) {
			RevCommit commit = ready.remove();
			List<ObjectId> parents = parents(commit, beyond);
			commits.add(plain(commit, parents));
			for (ObjectId parent : parents) {
				if (children.merge(parent, -1, Integer::sum) == 0 && found.containsKey(parent)) {
					ready.add(found.get(parent));
				}
			}
		}
		return commits;
	}
}
