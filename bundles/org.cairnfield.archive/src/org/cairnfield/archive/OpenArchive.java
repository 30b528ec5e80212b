package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.fault.LockOwner;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.FolderLock;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.archive.internal.disk.SaveRecovery;
import org.cairnfield.archive.internal.disk.UnfinishedSaveException;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;

/**
 * An archive that is open. The model may be changed at will; on disk it is changed by {@link #save} and what builds on it
 * only. Not safe for use by several threads.
 */
public final class OpenArchive implements AutoCloseable {

	private final Path root;
	private final ArchiveStore store;
	private final FolderLock lock;
	private final String lockless;
	private List<Damage> obstacles;
	private List<Damage> damages = List.of();
	private Loaded loaded;
	private FolderView view;
	private boolean unfinished;
	private final Unrecorded unrecorded;
	private Optional<String> interruptedNotice = Optional.empty();
	private final Drafts drafts;
	private FileDecisions decisions = new FileDecisions();

	/**
	 * @param lock      null: read-only
	 * @param lockless  why there is no lock
	 * @param obstacles why an interrupted save could not be finished
	 */
	OpenArchive(Path root, ArchiveStore store, FolderLock lock, String lockless, List<Damage> obstacles)
			throws IOException {
		this.root = root;
		this.store = store;
		this.lock = lock;
		this.lockless = lockless;
		this.obstacles = obstacles;
		this.drafts = new Drafts(this, store);
		this.unrecorded = new Unrecorded(root, store);
		reload();
		if (lock != null) {
			interruptedNotice = unrecorded.finish(view, damages);
		}
	}

	/** The folder. */
	public Path folder() {
		return root;
	}

	/** The model. After {@link #restore}, {@link #undo} and {@link #reload} it is another. */
	public Archive archive() {
		return loaded.archive();
	}

	/** What is wrong on disk; as long as there is anything the archive is read-only. */
	public List<Damage> damages() {
		return damages;
	}

	/** What a person may want to know although nothing is wrong. */
	public List<String> notices() {
		Stream<String> shallow = GitTraces.isShallow(root)
				? Stream.of(
						Messages.OpenArchive_gitShallowTheHistoryIs)
				: Stream.empty();
		return Stream.of(interruptedNotice.stream(), shallow, loaded.notices().stream()).flatMap(all -> all).toList();
	}

	/** Why nothing can be saved; empty if it can. */
	public Optional<String> readOnlyReason() {
		if (lock == null) {
			return Optional.of(lockless);
		}
		return damages.isEmpty() ? Optional.empty()
				: Optional.of(Words.bind(Messages.OpenArchive_itIsDamaged, damages.get(0),
						damages.size() > 1 ? Words.bind(Messages.OpenArchive_andMore, damages.size() - 1) : ""));
	}

	/** Whether the files are no longer those that were read or saved here: another program has written since. */
	public boolean isOutdated() throws IOException {
		return !view.sameAs(new FolderView(root, ArchiveLayout::isPart));
	}

	/** Whether the model was changed since it was read or saved. */
	public boolean isModified() {
		return ModelSave.isModified(loaded);
	}

	/** Whose lock was taken over when the archive was opened, since that process was gone. */
	public Optional<LockOwner> tookOverFrom() {
		return Optional.ofNullable(lock == null ? null : lock.tookOverFrom());
	}

	/** SHA-256 of the content of the model, releases left out; the same content gives the same however it came about. */
	public String digest() throws IOException {
		return digest(archive());
	}

	/** The same of a copy of the model, for work beside a user interface. */
	public static String digest(Archive content) throws IOException {
		return ArchiveFiles.digest(content);
	}

	/**
	 * The file that the archive refers to, such as a plan image.
	 *
	 * @param path below the folder, with / between its steps
	 * @throws ArchiveException for a path that leads out of the folder
	 */
	public Path resolve(String path) throws IOException {
		return Places.inside(root, path);
	}

	/** Reads the archive again from disk. What was changed and not saved is lost. */
	public void reload() throws IOException {
		StableLook look = StableLook.of(root, store);
		accept(look.view(), look.read());
	}

	private void accept(FolderView looked, Loaded read) throws IOException {
		List<Damage> all = Stream
				.of(obstacles, looked.damages(), read.damages(), LastCommit.damages(root),
						MergeLook.damages(root, lock != null))
				.flatMap(List::stream).distinct().toList();
		damages = HalfMerged.explain(root, looked, all);
		loaded = read;
		decisions = new FileDecisions();
		view = looked;
	}

	/**
	 * Saves in the name of a person. What somebody else saved, and no save point has yet, is recorded under that person's name
	 * first, so that the history never names the one for the work of the other.
	 *
	 * @return as {@link #save()}
	 */
	public SortedSet<String> save(Person person) throws IOException {
		requireWritable();
		unrecorded.saving(person);
		return saveMixing();
	}

	/** Name of who saved what no save point has yet; empty where that is not known, or all is recorded. */
	public Optional<String> savedBy() throws IOException {
		return unrecorded.savedBy();
	}

	/**
	 * Brings the files to what the model says: all of them or, if anything fails, none.
	 *
	 * @return paths of the files that have changed
	 * @throws ArchiveException telling what happened, and what to do; the model stays as it is
	 */
	public SortedSet<String> save() throws IOException {
		requireWritable();
		if (isModified()) {
			unrecorded.recorded(); // by whom this is not known, so nobody is named for it but who records it
		}
		return saveMixing();
	}

	private SortedSet<String> saveMixing() throws IOException {
		SortedSet<String> written = saveFiles();
		if (!written.isEmpty()) {
			unrecorded.mix();
		}
		return written;
	}

	private SortedSet<String> saveFiles() throws IOException {
		requireWritable();
		if (unfinished) {
			finish();
		}
		drafts.saving();
		try {
			SortedSet<String> written = new ModelSave(loaded, view).save(store.disk(), root, decisions);
			view = new FolderView(root, ArchiveLayout::isPart);
			drafts.saved();
			return written;
		} catch (UnfinishedSaveException e) {
			unfinished = true;
			throw e;
		}
	}

	/** Puts in place what the save before could not. */
	private void finish() throws IOException {
		obstacles = SaveRecovery.run(store.disk(), root);
		if (!obstacles.isEmpty()) {
			damages = obstacles;
			requireWritable();
		}
		view = new FolderView(root, ArchiveLayout::isPart);
		unfinished = false;
	}

	/**
	 * Saves, and records the state in the history.
	 *
	 * @param note in the person's own words, or null
	 * @return empty if nothing has changed since the last save point
	 */
	public Optional<SavePoint> savePoint(Person person, String note) throws IOException {
		return savePoint(person, note, true);
	}

	/** The same in the name of somebody who is not at work here, and so does not sign it. */
	public Optional<SavePoint> savePointFor(Person absent, String note) throws IOException {
		return savePoint(absent, note, false);
	}

	private Optional<SavePoint> savePoint(Person person, String note, boolean own) throws IOException {
		requireWritable();
		interruptedNotice = unrecorded.finish(view, damages);
		unrecorded.saving(person);
		Recording recording = new Recording(root, store, "", person, unrecorded.words(note)).signed(own);
		boolean alone = recording.begin(isModified() ? view.stamp() : "");
		Optional<SavePoint> made = recording.after(alone ? this::saveFiles : this::save);
		unrecorded.recorded();
		return made;
	}

	/**
	 * Puts a text about releases on disk in the name of a person, such as gates or a manifest, for the next save point.
	 *
	 * @param name of a file in {@code releases}
	 * @throws ArchiveException where it is the manifest of a version that was released
	 */
	public void putAboutReleases(String name, String text, Person person) throws IOException {
		requireWritable();
		unrecorded.saving(person);
		new Releasing(root, store).putFree("releases/" + name, text);
		view = new FolderView(root, ArchiveLayout::isPart);
	}

	/**
	 * Deletes what {@link #putAboutReleases} has put on disk, likewise; nothing happens where it is not there.
	 *
	 * @throws ArchiveException where it is the manifest of a version that was released
	 */
	public void deleteAboutReleases(String name, Person person) throws IOException {
		requireWritable();
		unrecorded.saving(person);
		new Releasing(root, store).deleteFree("releases/" + name);
		view = new FolderView(root, ArchiveLayout::isPart);
	}

	/**
	 * Freezes the content as a release: its manifest as {@code releases/VERSION.json}, a save point, and last an annotated tag
	 * of that name, signed where Git is configured to sign tags. Before the tag is there nothing is released; from then on
	 * the release is never changed, neither by {@link #restore}.
	 *
	 * @param digest  {@link #digest} of what the manifest tells of
	 * @param message of the tag
	 * @throws ArchiveException where the version was released, here or at the remote, the content is another, or a save point is due
	 */
	public ReleaseTag release(String version, String manifest, String digest, String message, Person person)
			throws IOException {
		requireWritable();
		requireUnmodified();
		exchange().requireFree(version);
		unrecorded.recordOfAnother(person);
		ReleaseTag made = new Releasing(root, store).release(version, manifest, digest, message, person);
		view = new FolderView(root, ArchiveLayout::isPart);
		unrecorded.recorded();
		return made;
	}

	/** Whether there is one; the first save point begins it. */
	public boolean hasHistory() {
		return GitTraces.isRepository(root);
	}

	/** The history, from the present state back. The caller closes it. */
	public History history() throws IOException {
		return History.of(root);
	}

	/**
	 * Makes the archive what it was at a save point, by a new one. Ledgers keep all lines; later verdicts are taken back by further
	 * ones. Unrecorded work becomes a save point first; files of a damaged archive are kept in {@code .cairnfield/damaged}.
	 *
	 * @return empty if the archive is like that already
	 * @throws DamagedException where somebody has begun a merge or the like with plain Git and has not finished it
	 * @throws ArchiveException where the model has changes that were not saved
	 */
	public Optional<SavePoint> restore(SavePoint point, Person person, String note) throws IOException {
		requireLock();
		HalfMerged.requireWhole(root);
		requireUnmodified();
		interruptedNotice = unrecorded.finish(view, damages);
		if (damages.isEmpty()) {
			recordFirst(point, person);
		}
		Recording recording = new Recording(root, store,
				Words.bind(Messages.OpenArchive_restore, point.shortId(), point.summary()), person,
				unrecorded.words(note));
		recording.begin(view.stamp());
		Optional<SavePoint> made = recording.after(() -> {
			new Restoring(root, store).restore(point, !damages.isEmpty(), person);
			obstacles = List.of();
			reload();
		});
		if (!damages.isEmpty()) {
			reload(); // what the history lacked, it may have now
		}
		return made;
	}

	/**
	 * Takes back what one save point changed, by a new one. What was changed since stays; verdicts are taken back by further lines
	 * of the ledger, those that a merge has brought together not at all.
	 *
	 * @throws ArchiveException where something was changed again since, and where the model has changes that were not saved
	 */
	public SavePoint undo(SavePoint point, Person person, String note) throws IOException {
		requireWritable();
		requireUnmodified();
		interruptedNotice = unrecorded.finish(view, damages);
		recordFirst(point, person);
		Recording recording = new Recording(root, store,
				Words.bind(Messages.OpenArchive_undo, point.shortId(), point.summary()), person,
				unrecorded.words(note));
		recording.begin(view.stamp());
		return recording.after(() -> {
			new Restoring(root, store).undo(point, person);
			reload();
		}).orElseThrow(
				() -> new ArchiveException(Words.bind(Messages.OpenArchive_isTakenBackAlready, point.shortId()),
						Messages.OpenArchive_thereIsNothingToDo));
	}

	/** For the exchange with others. */
	public Exchange exchange() {
		return new Exchange(this, store);
	}

	/** What keeps unsaved work beside the archive, so that it survives the end of this program. */
	public Drafts drafts() {
		return drafts;
	}

	Loaded loaded() {
		return loaded;
	}

	FolderView view() {
		return view;
	}

	private void recordFirst(SavePoint point, Person person) throws IOException {
		if (new Restoring(root, store).putBack()) {
			reload();
		}
		unrecorded.recordOfAnother(person);
		unrecorded.record(Words.bind(Messages.OpenArchive_asSavedBeforeIsRestored, point.shortId()), person, null);
	}

	private void requireLock() throws IOException {
		if (lock == null) {
			throw new ArchiveException(Words.bind(Messages.OpenArchive_isReadOnly, root, lockless),
					Messages.OpenArchive_openItForEditing);
		}
		lock.check();
	}

	void requireWritable() throws IOException {
		requireLock();
		if (!damages.isEmpty()) {
			throw new DamagedException(Words.bind(Messages.OpenArchive_nothingWasSavedIsDamaged, root,
					damages.get(0).file(), damages.get(0).reason()), damages.get(0).remedy(), damages);
		}
	}

	void requireUnmodified() throws ArchiveException {
		if (isModified()) {
			throw new ArchiveException(Words.bind(Messages.OpenArchive_hasChangesThatWereNot, root),
					Messages.OpenArchive_saveThemOrReadThe);
		}
	}

	/** Whether the history has grown so much that it is packed on {@link #close}, which takes a while. */
	public boolean isPackingDue() {
		return lock != null && Packing.isDue(root, damages);
	}

	/** Gives the lock back. What was changed and not saved is lost. Packs the history first, where that is due. */
	@Override
	public void close() throws IOException {
		close(Progress.NONE);
	}

	/** Likewise; where the progress is cancelled, packing is left for another time. */
	public void close(Progress progress) throws IOException {
		if (lock != null) {
			Packing.whereDue(root, lock, damages, progress);
			lock.close();
		}
	}
}
