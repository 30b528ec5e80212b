package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.internal.disk.Intended;
import org.cairnfield.archive.internal.disk.SavedBy;
import org.cairnfield.core.text.Words;

/**
 * What was saved and is in no save point yet: a save point that was interrupted, or a save without one. It is recorded by the
 * name of who did it, whoever comes next. Needs the lock of the folder, and the save before it finished.
 */
final class Unrecorded {

	private static final String AND = Messages.Unrecorded_and;

	private final Path root;
	private final ArchiveStore store;

	Unrecorded(Path root, ArchiveStore store) {
		this.root = root;
		this.store = store;
	}

	/**
	 * Finishes a save point that was interrupted by the name, the time and the words of who began it, where that is still possible.
	 *
	 * @param view    the files as they are
	 * @param damages of the archive; one that is damaged gets no save point
	 * @return what a person should know of it; empty where there was none, or where it had not saved anything
	 */
	Optional<String> finish(FolderView view, List<Damage> damages) throws IOException {
		Intended intended = Intended.read(root);
		if (intended == null) {
			Intended.withdraw(store.disk(), root); // one that was cut short means nothing
			return Optional.empty();
		}
		String began = Words.bind(Messages.Unrecorded_theSavePointThatWas, intended.byWhom());
		if (!damages.isEmpty()) {
			return Optional.of(Words.bind(Messages.Unrecorded_andWaitsUntilTheArchive, began));
		}
		if (intended.state().equals(Intended.MIXED)) {
			return Optional.of(
					Words.bind(Messages.Unrecorded_andOthersHaveChangedThe, began));
		}
		String last = GitTraces.isRepository(root) ? HeadTrace.of(root).id() : null;
		if (!intended.comesAfter(last) || intended.state().equals(view.stamp())) {
			Intended.withdraw(store.disk(), root); // it is in the history, or nothing was saved
			return Optional.empty();
		}
		try {
			Optional<SavePoint> made = Recording.of(intended, root, store).record();
			recorded();
			return made.map(point -> Words.bind(Messages.Unrecorded_itIsFinishedNowAs, began, point.shortId(),
					point.summary()));
		} catch (IOException | IllegalArgumentException e) {
			return Optional.of(Words.bind(Messages.Unrecorded_andCouldNotBeFinished, began, e.getMessage()));
		}
	}

	/** Who saved what no save point has yet; empty where that is not known, or all is recorded. */
	Optional<String> savedBy() throws IOException {
		return SavedBy.read(root);
	}

	/** Records what somebody else saved, under that name. */
	void recordOfAnother(Person person) throws IOException {
		Optional<String> other = savedBy().filter(name -> !name.equals(person.name()));
		if (other.isPresent()) {
			new Recording(root, store, "", Person.named(other.get()),
					words(Words.bind(Messages.Unrecorded_recordedBeforeSaved, person.name()))).signed(false)
					.record();
			recorded();
		}
	}

	/** Records all that was saved. */
	Optional<SavePoint> record(String opening, Person person, String own) throws IOException {
		Optional<SavePoint> made = new Recording(root, store, opening, person, words(own)).record();
		recorded();
		return made;
	}

	/** A person is about to save; what somebody else saved is recorded first. */
	void saving(Person person) throws IOException {
		String names = person.name();
		try {
			recordOfAnother(person);
		} catch (ArchiveException e) { // a history that takes nothing just now must not keep anybody from saving
			String others = savedBy().orElseThrow();
			names = List.of(others.split(AND)).contains(names) ? others : others + AND + names;
		}
		SavedBy.write(store.disk(), root, names);
	}

	/** All that was saved is in a save point. */
	void recorded() throws IOException {
		SavedBy.clear(store.disk(), root);
	}

	/** What is still unfinished, to be told in the save point that comes to hold it; null where nothing is. */
	String words(String own) throws IOException {
		Intended left = Intended.read(root);
		if (left == null) {
			return own;
		}
		return Words.bind(Messages.Unrecorded_holdsAlsoWhat, own == null || own.isBlank() ? "" : own + "\n\n",
				left.byWhom(), left.words() == null ? "" : ": " + left.words());
	}

	/** Something else is saved before it could be finished. */
	void mix() throws IOException {
		Intended left = Intended.read(root);
		if (left != null) {
			left.mixed().write(store.disk(), root);
		}
	}
}
