package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.UnreachableException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.GitRemote;
import org.cairnfield.archive.internal.git.Remotes;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;

/**
 * Exchanges an archive with others, through a remote repository. What is here becomes a save point, what others have sent is
 * merged with it, and both go to the remote. Nothing is ever forced, rebased or left half merged: whatever fails, the archive
 * is as it was, or has all that came in.
 */
public final class Exchange {

	/** What people should know before they connect an archive. */
	public static final String CAUTION = "What is sent can be read by everybody who reaches the remote, and stays in its history for good: addresses of access points, "
			+ "positions, and the names of who surveyed, reviewed and released. Addresses and names can be personal data; local law decides who may have "
			+ "them. Positions are not for safety of life without independent validation.";

	/** How often to try again where somebody else sends at the same time. */
	private static final int TRIES = 10;

	private final OpenArchive open;
	private final Path root;
	private final ArchiveStore store;

	Exchange(OpenArchive open, ArchiveStore store) {
		this.open = open;
		this.root = open.folder();
		this.store = store;
	}

	/** Where the archive is exchanged; empty where it is connected to no remote. */
	public Optional<RemoteUrl> remote() throws IOException {
		return open.hasHistory() ? Optional.ofNullable(Remotes.of(root)) : Optional.empty();
	}

	/** Connects the archive; nothing is sent before {@link #run}. What was known of a remote before is forgotten. */
	public void connect(RemoteUrl url) throws IOException {
		open.requireWritable();
		try (GitFolder git = GitFolder.open(root)) {
			git.connect(url, branch(git));
		}
	}

	/**
	 * Fetches, and says what an exchange would bring and send. The archive stays as it is.
	 *
	 * @throws org.cairnfield.archive.fault.UnreachableException where the remote cannot be reached
	 * @throws org.cairnfield.archive.fault.DamagedException     where what others have sent is damaged
	 */
	public Exchanged look(Progress progress) throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			GitRemote.Fetched fetched = fetch(git, git.remote(required()), progress);
			Commit head = head(git);
			Incoming incoming = new Incoming(git, store, root, head, fetched.tip(), null);
			return new Exchanged(points(incoming.received()), points(git.ancestry().since(head.id(), fetched.tip())),
					Optional.empty(),
					incoming.received().isEmpty() ? open.archive().getConflicts().size() : incoming.conflicts(),
					incoming.notes());
		}
	}

	/**
	 * Exchanges: makes a save point of what is here, takes in what others have sent, and sends what they lack.
	 *
	 * @param note for the save point of what is here, or null
	 * @param send whether others are to have what is here; otherwise what they have sent is taken in only
	 * @throws org.cairnfield.archive.fault.UnreachableException where the remote cannot be reached or does not take what is sent;
	 *                                                           in the latter case what others have sent is here already
	 * @throws org.cairnfield.archive.fault.DamagedException     where what others have sent is damaged; nothing of it is taken in
	 */
	public Exchanged run(Person person, String note, boolean send, Progress progress) throws IOException {
		open.requireWritable();
		RemoteUrl url = required();
		open.savePoint(person, note);
		ExchangeRounds rounds = new ExchangeRounds(open, store, person, progress);
		for (int n = 1; n <= TRIES; n++) {
			try (GitFolder git = GitFolder.open(root)) {
				GitRemote remote = git.remote(url);
				GitRemote.Fetched fetched = rounds.takeIn(git, remote);
				if (rounds.send(git, remote, fetched, send)) {
					return rounds.outcome();
				}
			}
		}
		throw new ArchiveException(
				"others are sending to " + url
						+ " all the time; what they had sent before is here, yours is not there yet",
				"exchange again in a moment");
	}

	/** Passes where the remote, as far as it can be reached, has no release of a version. Otherwise the exchange will tell. */
	void requireFree(String version) throws IOException {
		Optional<RemoteUrl> url;
		try {
			url = remote();
		} catch (ArchiveException e) {
			return; // not a remote that anything is exchanged with
		}
		if (url.isEmpty()) {
			return;
		}
		try (GitFolder git = GitFolder.open(root)) {
			if (git.remote(url.get()).fetch(branch(git), Progress.NONE).tags().containsKey(version)
					&& !git.hasTag(version)) {
				throw new ArchiveException(
						version + " was released by others already, and what is released is never changed",
						"exchange, then choose a higher version");
			}
		} catch (UnreachableException e) {
			// a release can be made anywhere; where two make one of a version, the one that arrives first stands
		}
	}

	/** What the remote has, which goes on from what it had before. */
	static GitRemote.Fetched fetch(GitFolder git, GitRemote remote, Progress progress) throws IOException {
		String branch = branch(git);
		GitRemote.Fetched fetched = remote.fetch(branch, progress);
		String last = remote.lastSeen(branch);
		if (fetched.tip() == null && !fetched.others().isEmpty()) {
			throw new ArchiveException(
					"the remote has no branch '" + branch + "', but " + String.join(", ", fetched.others())
							+ "; nothing was changed",
					"go to the branch that is meant with Git");
		}
		if (last != null && (fetched.tip() == null || !git.ancestry().isIn(last, fetched.tip()))) {
			Commit lost = git.find(last);
			throw new ArchiveException(
					"the remote was rewritten: it lacks the save point " + last.substring(0, 8) + " by " + lost.author()
							+ " of " + lost.time()
							+ " that it had before; nothing was changed",
					"find out who did that and why; to bring both together all the same, connect the archive again, then exchange");
		}
		return fetched;
	}

	private RemoteUrl required() throws IOException {
		return remote()
				.orElseThrow(() -> new ArchiveException(root + " is not connected to a remote", "connect it first"));
	}

	static String branch(GitFolder git) throws IOException {
		String branch = git.branch();
		if (branch == null) {
			throw new ArchiveException(
					"the archive is at no branch, so nobody could receive its work; nothing was changed",
					"go back to its branch with Git");
		}
		return branch;
	}

	static Commit head(GitFolder git) throws IOException {
		Commit head = git.head();
		if (head == null) {
			throw new ArchiveException("the archive has no save point yet", "make one first");
		}
		return head;
	}

	private List<SavePoint> points(List<Commit> commits) throws IOException {
		return points(root, commits);
	}

	static List<SavePoint> points(Path root, List<Commit> commits) throws IOException {
		List<SavePoint> points = new ArrayList<>();
		try (History history = History.of(root)) {
			for (Commit commit : commits) {
				points.add(history.find(commit.id()));
			}
		}
		return points;
	}
}
