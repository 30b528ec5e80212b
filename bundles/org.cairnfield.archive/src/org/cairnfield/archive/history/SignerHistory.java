package org.cairnfield.archive.history;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitAudit;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.core.text.Words;

/**
 * Which list of people counts at each commit. A change of the list counts where the commit that makes it is signed by a lead
 * of the list before; the first list where it is signed by a lead that it names itself. What does not count leaves the list
 * before in force. A merge of two lists that leads have changed is a change as well; unless a lead of each has signed it, the
 * list counts whose file it has kept.
 */
final class SignerHistory {

	/**
	 * What counts from a commit on.
	 *
	 * @param origin id of the commit that brought it; null before there is a list
	 * @param blob   Git's name of the file; null where there is none
	 */
	private record Counting(String origin, String blob, SignerList list) {
	}

	private static final Counting NOTHING = new Counting(null, null, SignerList.NOBODY);

	private final GitAudit git;
	private final Map<String, Commit> commits = new LinkedHashMap<>();
	private final Map<String, Counting> counting = new LinkedHashMap<>();
	/** By commit, in words. */
	private final Map<String, String> problems = new LinkedHashMap<>();
	private final List<String> changes = new ArrayList<>();

	/** @param history commits, each after those that it came from */
	SignerHistory(GitAudit git, Collection<Commit> history) throws IOException {
		this.git = git;
		for (Commit commit : history) {
			commits.put(commit.id(), commit);
			counting.put(commit.id(), after(commit));
		}
	}

	/** The list that counts at a commit. */
	SignerList at(String commit) {
		return counting.get(commit).list();
	}

	/** The list that counts at a commit, then those that leads have made since: people sign before somebody names them. */
	List<SignerList> since(String commit) {
		Set<String> before = ancestors(commit);
		before.add(commit);
		List<SignerList> lists = new ArrayList<>(List.of(at(commit)));
		counting.values().stream().filter(one -> one.origin() != null && !before.contains(one.origin()))
				.map(Counting::list).distinct().forEach(lists::add);
		return lists;
	}

	/** Changes that do not count, in words, as long as no lead has signed a list that was made after them. */
	List<String> problems(String last) {
		return problems(last, false);
	}

	/** Those after which a lead has signed a list, so that somebody has looked. */
	List<String> settled(String last) {
		return problems(last, true);
	}

	private List<String> problems(String last, boolean settled) {
		String origin = counting.get(last).origin();
		Set<String> before = origin == null ? Set.of() : ancestors(origin);
		return problems.entrySet().stream().filter(problem -> before.contains(problem.getKey()) == settled)
				.map(Map.Entry::getValue).toList();
	}

	/** Changes that count, in words, the oldest first. */
	List<String> changes() {
		return List.copyOf(changes);
	}

	private Counting after(Commit commit) throws IOException {
		List<Counting> before = before(commit);
		String blob = blob(commit);
		if (before.stream().allMatch(one -> Objects.equals(blob, one.blob()))
				|| before.size() == 1 && isTakenOver(commit, blob)) {
			return before.get(0);
		}
		SignerList list = blob == null ? SignerList.NOBODY : SignerList.of(git.content(blob));
		if (isCutOff(commit)) {
			changes.add(Words.bind(Messages.SignerHistory_asInBeforeWhichThe, name(commit)));
			return new Counting(commit.id(), blob, list);
		}
		for (Counting one : before) {
			SignerList leads = (one == NOTHING ? list : one.list()).leads();
			Signature signature = git.signature(commit, leads);
			if (signature.state() != State.GOOD || leads.isEmpty()) {
				problems.put(commit.id(), before.size() > 1
						? Words.bind(Messages.SignerHistory_bringsTogetherTwoListsThat, name(commit), signature)
						: Words.bind(Messages.SignerHistory_changesAndIsNotSigned, name(commit),
								ArchiveLayout.PEOPLE, signature));
				return before.stream().filter(side -> Objects.equals(blob, side.blob())).findFirst()
						.orElse(before.get(0));
			}
			if (one == before.get(0)) {
				changes.add(Words.bind(Messages.SignerHistory_signedBy,
						one == NOTHING ? Messages.SignerHistory_begunIn : Messages.SignerHistory_changedIn,
						name(commit), signature.by(), signature.detail()));
			}
		}
		return new Counting(commit.id(), blob, list);
	}

	/** Whether the file is that of a parent: whoever put it there was judged there. */
	private boolean isTakenOver(Commit commit, String blob) throws IOException {
		for (String id : commit.parents()) {
			if (commits.containsKey(id) && Objects.equals(blob, blob(commits.get(id)))) {
				return true;
			}
		}
		return false;
	}

	/** Whether what it came from was left out when the archive was cloned. */
	private boolean isCutOff(Commit commit) {
		return !commit.parents().isEmpty() && commit.parents().stream().noneMatch(commits::containsKey);
	}

	/** What counts before a commit: one list, or several where its parents have lists of which none comes from the others. */
	private List<Counting> before(Commit commit) {
		List<Counting> all = commit.parents().stream().map(counting::get).filter(Objects::nonNull).distinct().toList();
		List<Counting> latest = all.stream()
				.filter(one -> all.stream().noneMatch(other -> other != one && comesFrom(other, one))).toList();
		return latest.isEmpty() ? List.of(NOTHING) : latest;
	}

	private boolean comesFrom(Counting later, Counting earlier) {
		return later.origin() != null
				&& (earlier.origin() == null || ancestors(later.origin()).contains(earlier.origin()));
	}

	private Set<String> ancestors(String id) {
		Set<String> found = new HashSet<>();
		Deque<String> waiting = new ArrayDeque<>(commits.get(id).parents());
		while (!waiting.isEmpty()) {
			Commit next = commits.get(waiting.pop());
			if (next != null && found.add(next.id())) {
				waiting.addAll(next.parents());
			}
		}
		return found;
	}

	private String blob(Commit commit) throws IOException {
		return git.filesIn(ArchiveLayout.PEOPLE_FOLDER, commit).get(ArchiveLayout.PEOPLE);
	}

	private static String name(Commit commit) {
		return Words.bind(Messages.SignerHistory_savePoint, commit.id().substring(0, 8));
	}
}
