package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.GitRemote;
import org.cairnfield.archive.internal.git.TagExchange;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.task.Progress;

/**
 * The rounds of one exchange: each takes in what others have sent and sends what they lack, and is repeated where somebody
 * else was faster. What was taken in stays, whatever comes of sending.
 */
final class ExchangeRounds {

	private final OpenArchive open;
	private final Path root;
	private final ArchiveStore store;
	private final Person person;
	private final Progress progress;
	private final List<SavePoint> received = new ArrayList<>();
	private final List<String> notes = new ArrayList<>();
	private List<SavePoint> sent = List.of();
	private Optional<SavePoint> merged = Optional.empty();

	ExchangeRounds(OpenArchive open, ArchiveStore store, Person person, Progress progress) {
		this.open = open;
		this.root = open.folder();
		this.store = store;
		this.person = person;
		this.progress = progress;
	}

	/** Fetches, and brings what has come together with what is here. */
	GitRemote.Fetched takeIn(GitFolder git, GitRemote remote) throws IOException {
		String branch = Exchange.branch(git);
		GitRemote.Fetched fetched = Exchange.fetch(git, remote, progress);
		TagExchange tags = git.tagExchange(fetched.tags());
		tags.requireUnmoved(remote.lastSeen(branch));
		Incoming incoming = incoming(git, fetched);
		if (incoming.needsRenaming()) {
			notes.addAll(incoming.notes());
			rename(incoming);
			incoming = incoming(git, fetched);
		}
		if (!incoming.received().isEmpty()) {
			merged = merge(git, incoming, fetched.tip()).or(() -> merged);
			received.addAll(Exchange.points(root, incoming.received()));
			notes.addAll(incoming.notes());
		}
		notes.addAll(tags.adopt());
		if (fetched.tip() != null) {
			remote.seen(branch, fetched.tip());
		}
		return fetched;
	}

	private Incoming incoming(GitFolder git, GitRemote.Fetched fetched) throws IOException {
		return new Incoming(git, store, root, Exchange.head(git), fetched.tip(), person.name());
	}

	/**
	 * Sends what the others lack.
	 *
	 * @param wanted whether they are to have it
	 * @return whether the exchange is done; otherwise somebody was faster
	 */
	boolean send(GitFolder git, GitRemote remote, GitRemote.Fetched fetched, boolean wanted) throws IOException {
		if (!wanted) {
			return true;
		}
		String branch = Exchange.branch(git);
		Commit head = Exchange.head(git);
		List<Commit> commits = git.ancestry().since(head.id(), fetched.tip());
		List<String> tags = git.tagExchange(fetched.tags()).toSend(head.id());
		if ((!commits.isEmpty() || !tags.isEmpty()) && !remote.push(branch, head.id(), fetched.tip(), tags, progress)) {
			return false;
		}
		remote.seen(branch, head.id());
		sent = Exchange.points(root, commits);
		return true;
	}

	/** What has come of all rounds. */
	Exchanged outcome() {
		return new Exchanged(received, sent, merged, open.archive().getConflicts().size(), notes);
	}

	/** As a save point of its own, so that a merge brings nothing that no side has. */
	private void rename(Incoming incoming) throws IOException {
		Recording recording = new Recording(root, store, Messages.ExchangeRounds_renameWhatOthersHaveUnder, person,
				String.join("\n", incoming.notes()));
		recording.begin(open.view().stamp());
		recording.after(() -> save(incoming::tellRenamed));
		open.reload();
	}

	private interface Telling {
		void to(FileChanges changes) throws IOException;
	}

	private void save(Telling telling) throws IOException {
		try (Save save = Save.begin(store.disk(), root)) {
			telling.to(save);
			save.commit();
		}
	}

	/** @return the save point that brings both sides together; empty where nothing here was new to the others */
	private Optional<SavePoint> merge(GitFolder git, Incoming incoming, String tip) throws IOException {
		Commit before = Exchange.head(git);
		Recording recording = Recording.merging(tip, root, store, incoming.summary(), person,
				incoming.notes().isEmpty() ? null : String.join("\n", incoming.notes()));
		recording.begin(open.view().stamp());
		Optional<SavePoint> made = recording.after(() -> save(incoming::tell));
		git.checkOutOthers(before, Exchange.head(git), ArchiveLayout::isPart);
		open.reload();
		return made.filter(point -> !point.id().equals(tip));
	}
}
