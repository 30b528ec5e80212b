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
import org.cairnfield.core.text.Words;

/**
 * Exchanges an archive with others, through a remote repository. What is here becomes a save point, what others have sent is
 * merged with it, and both go to the remote. Nothing is ever forced, rebased or left half merged: whatever fails, the archive
 * is as it was, or has all that came in.
 */
public final class Exchange {

	/** What people should know before they connect an archive. */
	public static final String CAUTION = Messages.Exchange_whatIsSentCanBe;

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
				Words.bind(Messages.Exchange_othersAreSendingToAll, url),
				Messages.Exchange_exchangeAgainInAMoment);
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
						Words.bind(Messages.Exchange_wasReleasedByOthersAlready, version),
						Messages.Exchange_exchangeThenChooseAHigher);
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
					Words.bind(Messages.Exchange_theRemoteHasNoBranch, branch, String.join(", ", fetched.others())),
					Messages.Exchange_goToTheBranchThat);
		}
		if (last != null && (fetched.tip() == null || !git.ancestry().isIn(last, fetched.tip()))) {
			Commit lost = git.find(last);
			throw new ArchiveException(
					Words.bind(Messages.Exchange_theRemoteWasRewrittenIt, last.substring(0, 8), lost.author(),
							lost.time()),
					Messages.Exchange_findOutWhoDidThat);
		}
		return fetched;
	}

	private RemoteUrl required() throws IOException {
		return remote()
				.orElseThrow(() -> new ArchiveException(Words.bind(Messages.Exchange_isNotConnectedToA, root),
						Messages.Exchange_connectItFirst));
	}

	static String branch(GitFolder git) throws IOException {
		String branch = git.branch();
		if (branch == null) {
			throw new ArchiveException(
					Messages.Exchange_theArchiveIsAtNo,
					Messages.Exchange_goBackToItsBranch);
		}
		return branch;
	}

	static Commit head(GitFolder git) throws IOException {
		Commit head = git.head();
		if (head == null) {
			throw new ArchiveException(Messages.Exchange_theArchiveHasNoSave, Messages.Exchange_makeOneFirst);
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
