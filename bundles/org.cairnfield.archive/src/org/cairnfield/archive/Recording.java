package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.DiskFaults;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.internal.disk.Intended;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;

/**
 * Makes one save point of what is on disk. A note of it lies in the private folder meanwhile, see {@link Intended}: one that
 * was interrupted is finished by whoever opens the archive next, as the one who began it meant it.
 */
final class Recording {

	private static final String NOT_RECORDED = Messages.Recording_theFilesAreSavedBut;

	private final Path root;
	private final ArchiveStore store;
	private final String opening;
	private final Person person;
	private final String words;
	private final Instant time;
	private final String with;
	private boolean noted;
	private boolean signed = true;

	/**
	 * @param opening first line of the message in place of counts, or empty
	 * @param words   of the person, or null
	 */
	Recording(Path root, ArchiveStore store, String opening, Person person, String words) {
		this(root, store, opening, person, words, store.clock().instant(), null);
	}

	/** One that takes in the work of others. */
	static Recording merging(String with, Path root, ArchiveStore store, String opening, Person person, String words) {
		return new Recording(root, store, opening, person, words, store.clock().instant(), with);
	}

	private Recording(Path root, ArchiveStore store, String opening, Person person, String words, Instant time,
			String with) {
		this.root = root;
		this.store = store;
		this.opening = opening;
		this.person = person;
		this.words = words;
		this.time = time;
		this.with = with;
	}

	/** One that was interrupted. */
	static Recording of(Intended intended, Path root, ArchiveStore store) {
		return new Recording(root, store, intended.opening(), new Person(intended.person(), intended.email()),
				intended.words(),
				intended.time(), intended.with()).signed(false);
	}

	/** @param own whether it is recorded for who is at work; for somebody else no key that is at hand here can stand */
	Recording signed(boolean own) {
		signed = own;
		return this;
	}

	/**
	 * Notes what is about to be saved and recorded, unless an interrupted save point is still to be finished.
	 *
	 * @param state of the files before they are saved; empty where they are saved already
	 * @return whether the note is this one's
	 */
	boolean begin(String state) throws IOException {
		if (!noted && Intended.read(root) == null) {
			String before = GitTraces.isRepository(root) ? HeadTrace.of(root).id() : null;
			new Intended(person.name(), person.email(), time, opening, words, before, state, with).write(store.disk(),
					root);
			noted = true;
		}
		return noted;
	}

	/** What is to be recorded. */
	interface Change {
		void make() throws IOException;
	}

	/** Changes the files, then records them. What fails is told, and not finished by somebody else. */
	Optional<SavePoint> after(Change change) throws IOException {
		try {
			change.make();
		} catch (IOException e) {
			giveUp();
			throw e;
		}
		return record();
	}

	/** Takes the note away, where this one put it there: whoever began it knows that it failed. */
	private void giveUp() {
		try {
			if (noted) {
				Intended.withdraw(store.disk(), root);
			}
		} catch (IOException e) {
			// whoever opens the archive next finishes it
		}
	}

	/** @return empty if nothing has changed since the last save point */
	Optional<SavePoint> record() throws IOException {
		try {
			begin("");
			Optional<SavePoint> made = commit();
			Intended.withdraw(store.disk(), root);
			return made;
		} catch (DamagedException e) {
			giveUp();
			Damage first = e.damages().get(0);
			throw new DamagedException(
					Words.bind(Messages.Recording_theHistoryIsDamaged, NOT_RECORDED, first.file(), first.reason()),
					e.remedy(),
					e.damages(), e);
		} catch (IOException e) {
			giveUp();
			throw DiskFaults.explain(NOT_RECORDED, root, e);
		}
	}

	private Optional<SavePoint> commit() throws IOException {
		if (!GitTraces.isRepository(root)) {
			GitFolder.init(root).close();
		}
		try (GitFolder git = GitFolder.open(root); History history = History.of(root)) {
			GitFolder.Obstacle obstacle = git.obstacle();
			if (obstacle != null) {
				throw new ArchiveException(NOT_RECORDED + ": " + obstacle.what(),
						Words.bind(Messages.Recording_thenMakeTheSavePoint, obstacle.remedy()));
			}
			SavePoint before = history.last();
			ArchiveDiff diff = history.compareWithSaved(before);
			requireToGrow(diff);
			if (with != null) {
				requireToGrow(history.compareWithSaved(history.find(with)));
			}
			FolderView view = new FolderView(root, ArchiveLayout::isPart);
			Commit commit = git.commit(view.files(), ArchiveLayout::isPart,
					History.message(opening, diff, person, words), person.name(),
					person.email(), time, with, signed);
			if (commit == null) {
				return Optional.empty();
			}
			if (with == null) {
				MergeLook.recorded(root, before == null ? null : before.id(), commit.id());
			}
			return Optional.of(history.find(commit.id()));
		}
	}

	/** A verdict that a save point holds is taken back by another verdict, not by taking it out; a comment stays. */
	private static void requireToGrow(ArchiveDiff diff) throws ArchiveException {
		for (ObjectChange change : diff.objects()) {
			if (change.what().equals("comment") && change.way() != ObjectChange.Way.ADDED) {
				throw new ArchiveException(
						Words.bind(Messages.Recording_commentOfAnEarlierSave, NOT_RECORDED, change.id()),
						Messages.Recording_putItBackAsIt);
			}
			if (change.what().equals("verdict") && change.way() != ObjectChange.Way.ADDED) {
				throw new ArchiveException(
						Words.bind(Messages.Recording_verdictOfAnEarlierSave, NOT_RECORDED, change.id()),
						Messages.Recording_putItBackAndGive);
			}
		}
	}
}
