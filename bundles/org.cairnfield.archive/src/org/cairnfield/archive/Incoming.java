package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.MergeLoss;
import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.git.Ancestry;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.merge.ArchiveMerge;
import org.cairnfield.archive.internal.merge.Renaming;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.Count;

/** What others have sent, and what comes of it together with what is here. Looks only. */
final class Incoming {

	private final GitFolder git;
	private final ArchiveStore store;
	private final Path root;
	private final Commit head;
	private final String tip;
	private final List<Commit> received;
	private final List<String> notes = new ArrayList<>();
	private final Archive theirs;
	private Archive merged;
	private MergedFiles files;
	private Renaming renaming;

	/**
	 * @param tip the last save point that the remote has; null where it has none
	 * @param person who takes it in
	 * @throws DamagedException where what the remote has is damaged
	 */
	Incoming(GitFolder git, ArchiveStore store, Path root, Commit head, String tip, String person) throws IOException {
		this.git = git;
		this.store = store;
		this.root = root;
		this.head = head;
		this.tip = tip;
		received = tip == null ? List.of() : git.ancestry().since(tip, head.id());
		theirs = received.isEmpty() ? null : sound(tip);
		if (!received.isEmpty()) {
			requireNothingDropped();
			if (!isAhead()) {
				merge(person);
			}
		}
	}

	/** Save points of others that are not here, the earliest first. */
	List<Commit> received() {
		return received;
	}

	/** Whether the others have all that is here, so that theirs only has to be taken over. */
	private boolean isAhead() throws IOException {
		return git.ancestry().isIn(head.id(), tip);
	}

	/** What people should know of and need not decide. */
	List<String> notes() {
		List<String> all = new ArrayList<>(notes);
		if (files != null) {
			all.addAll(files.notes());
		}
		return all;
	}

	/** How many things will be open in the archive. */
	int conflicts() {
		Archive then = merged != null ? merged : theirs;
		return then == null ? 0 : then.getConflicts().size();
	}

	/** The first line of the save point that takes it in. */
	String summary() {
		String people = received.stream().map(Commit::author).distinct().sorted().collect(Collectors.joining(", "));
		return Words.bind(Messages.Incoming_takeInOf, Count.of(received.size(), Messages.Incoming_savePoint),
				people);
	}

	/** Whether things here have to be called otherwise before, which is a change of its own. */
	boolean needsRenaming() {
		return renaming != null && renaming.isAny();
	}

	/** Tells how the files of the folder are to be for that. */
	void tellRenamed(FileChanges changes) throws IOException {
		TreeFiles here = files(head.id());
		new MergedFiles(here, here, here, new PlanImages(here, here, renaming.archive(), here, renaming.archive()),
				null)
				.tell(renaming.archive(), true, changes);
	}

	/** Tells how the files of the folder are to be. */
	void tell(FileChanges changes) throws IOException {
		if (merged != null) {
			files.tell(merged, false, changes);
			return;
		}
		TreeFiles there = files(tip);
		SortedSet<String> paths = new TreeSet<>();
		there.paths().forEach(paths::add);
		files(head.id()).paths().forEach(paths::add);
		for (String path : paths) {
			if (there.has(path)) {
				try (InputStream in = there.open(path)) {
					changes.put(path, in::transferTo);
				}
			} else {
				changes.delete(path);
			}
		}
	}

	private TreeFiles files(String commit) throws IOException {
		return git.files(git.find(commit), ArchiveLayout::isPart);
	}

	private Archive sound(String commit) throws IOException {
		Loaded loaded = ArchiveReader.read(files(commit), store.migrations(), ArchiveReader.VOUCHED);
		if (!loaded.damages().isEmpty()) {
			throw damaged(loaded.damages());
		}
		return loaded.archive();
	}

	private DamagedException damaged(List<Damage> damages) throws IOException {
		Damage first = damages.get(0);
		return new DamagedException(
				Words.bind(Messages.Incoming_nothingWasTakenInWhat, git.find(tip).author(), first.file(),
						first.reason()),
				Words.bind(Messages.Incoming_inTheArchiveThatIt, first.remedy()), damages);
	}

	/** Merges by plain Git that have dropped what people's work rests on do not come in. */
	private void requireNothingDropped() throws IOException {
		try (History history = History.of(root)) {
			List<Damage> losses = history.check().mergeLosses(history.find(tip), head.id()).stream()
					.map(MergeLoss::damage).toList();
			if (!losses.isEmpty()) {
				throw damaged(losses);
			}
		}
	}

	private void merge(String person) throws IOException {
		Ancestry ancestry = git.ancestry();
		List<Commit> bases = ancestry.bases(head.id(), tip);
		if (bases.isEmpty()) {
			throw new ArchiveException(
					Messages.Incoming_nothingWasTakenInThe,
					Messages.Incoming_connectToTheRightRemote);
		}
		if (bases.size() > 1) {
			throw new ArchiveException(
					Messages.Incoming_nothingWasTakenInThis,
					Messages.Incoming_exchangeWithOneRemoteOnly);
		}
		String base = bases.get(0).id();
		Archive before = sound(base);
		renaming = Renaming.of(before, sound(head.id()), theirs, person);
		notes.addAll(renaming.notes());
		TreeFiles then = files(base);
		TreeFiles here = files(head.id());
		TreeFiles there = files(tip);
		PlanImages images = new PlanImages(then, here, renaming.archive(), there, theirs);
		try {
			ArchiveMerge.Merged both = ArchiveMerge.of(before, images.mine(renaming.archive()),
					images.mineBy(new SideAuthors(git, store.migrations(), ancestry.since(head.id(), base))),
					images.theirs(theirs),
					images.theirsBy(new SideAuthors(git, store.migrations(), ancestry.since(tip, base))),
					MergedFiles.gates(then, here, there));
			if (!both.changed().isEmpty()) {
				throw new ArchiveException(
						Words.bind(Messages.Incoming_nothingWasTakenInVerdict, both.changed().get(0)),
						Messages.Incoming_findOutWithVerifyOn);
			}
			merged = both.archive();
			notes.addAll(both.notes());
			files = new MergedFiles(then, here, there, images, both.gates());
		} catch (UncheckedIOException e) {
			throw e.getCause();
		}
	}
}
