package org.cairnfield.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.internal.disk.ChangedFiles;
import org.cairnfield.archive.internal.disk.DiskFaults;
import org.cairnfield.archive.internal.disk.DraftFile;
import org.cairnfield.archive.internal.disk.DraftWriter;
import org.cairnfield.archive.internal.disk.FolderLock;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.StateHashes;
import org.cairnfield.archive.internal.merge.ModelPatch;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.ecore.resource.Resource;

/**
 * The drafts of one open archive, which keep unsaved work beside it. One file a draft: the files that a save would write,
 * sealed, and put in place by one rename. It names the state on disk that it was based on by a digest of all files; only on
 * that state can it be applied. A session overwrites none but its own draft. One from before stays until it was brought back
 * and saved, or somebody discards it: a draft that was brought back is named by the session's own, which has its changes too,
 * and is hidden as long as that one is there. {@link #write(Unsaved)} may run on a thread of its own; all else is for the model's.
 */
public final class Drafts {

	private static final String END = ".draft";
	private static final int LONGEST_NAME = 40;
	private static final int HASH_DIGITS = 12;

	private final OpenArchive archive;
	private final Path root;
	private final ArchiveStore store;
	private final StateHashes hashes = new StateHashes(path -> ArchiveLayout.kind(path) != null);
	private Path own;
	private String ownSummary;
	private String ownPerson = "";
	/** Number of what was taken out of the model last, and up to which no draft is to be written any more. */
	private int taken;
	private int outdated;
	/** Drafts of earlier sessions whose changes are in the model now. */
	private final Set<Path> broughtBack = new LinkedHashSet<>();

	Drafts(OpenArchive archive, ArchiveStore store) {
		this.archive = archive;
		this.root = archive.folder();
		this.store = store;
	}

	/** As {@link #write(Path, String)}, by nobody who is named. */
	public boolean write(Path folder) throws IOException {
		return write(folder, "");
	}

	/**
	 * Keeps what is not saved in a draft, so that it survives the end of this program. The draft holds only the files that a
	 * save would write; it is there whole or not at all, and replaces the one before of this session. It changes nothing in
	 * the archive; {@link OpenArchive#save} removes it. Cheap enough to be called every few seconds.
	 *
	 * @param folder where drafts are kept, of any number of archives; not in the archive; made where it is not there
	 * @param person name of who made the changes; may be empty
	 * @return whether there was anything to keep; if not, nothing is written
	 * @throws ArchiveException where the archive is read-only or the draft can not be written; the one before is still there
	 */
	public boolean write(Path folder, String person) throws IOException {
		Optional<Unsaved> unsaved = unsaved(folder, person);
		if (unsaved.isPresent()) {
			write(unsaved.get());
		}
		return unsaved.isPresent();
	}

	/**
	 * Takes what is not saved out of the model, for {@link #write(Unsaved)} on another thread while people go on working. Costs
	 * by the number of objects that have changed, not of samples.
	 *
	 * @return empty where nothing is to be kept
	 * @throws ArchiveException as {@link #write(Path, String)}
	 */
	public synchronized Optional<Unsaved> unsaved(Path folder, String person) throws IOException {
		if (!archive.isModified()) {
			return Optional.empty();
		}
		if (archive.readOnlyReason().isPresent()) {
			throw new ArchiveException(
					Words.bind(Messages.Drafts_noDraftWasWrittenIs, root, archive.readOnlyReason().get()),
					Messages.Drafts_openItForEditing);
		}
		Path place = folder.toAbsolutePath().normalize();
		if (place.startsWith(root)) {
			throw new ArchiveException(Words.bind(Messages.Drafts_noDraftWasWrittenIs2, place),
					Messages.Drafts_keepDraftsBesideTheArchive);
		}
		return Optional.of(take(place, person));
	}

	private Unsaved take(Path place, String person) throws IOException {
		DueFiles files = DueFiles.of(archive.loaded(), ArchiveFiles.parts(archive.archive()), archive.archive())
				.detached();
		return new Unsaved(place, person, files, archive.view(),
				broughtBack.stream().map(other -> other.getFileName().toString()).toList(), ++taken);
	}

	/**
	 * Keeps it as {@link #write(Path, String)} does. Does nothing where something later was kept, or the drafts were discarded,
	 * after it was taken: what was undone or saved does not come back.
	 */
	public synchronized void write(Unsaved unsaved) throws IOException {
		if (unsaved.number <= outdated) {
			return;
		}
		outdated = unsaved.number;
		Path place = unsaved.folder;
		try {
			Files.createDirectories(place);
			Path file = own != null && place.equals(own.getParent()) ? own : free(place);
			try (DraftWriter writer = DraftWriter.begin(store.disk(), file)) {
				unsaved.files.tell(unsaved.view, writer);
				SortedMap<String, String> state = state(unsaved.view);
				String base = state == null ? null : StateHashes.digest(state);
				String summary = base + writer.summary() + unsaved.person + unsaved.replaces;
				if (!file.equals(own) || !summary.equals(ownSummary) || !Files.exists(file)) {
					writer.finish(root, FolderLock.thisProcess(store.clock().instant()), unsaved.person,
							unsaved.replaces, base);
				}
				own = file;
				ownSummary = summary;
				ownPerson = unsaved.person;
			}
		} catch (IllegalArgumentException e) {
			throw new ArchiveException(Words.bind(Messages.Drafts_noDraftWasWritten, e.getMessage()),
					Messages.Drafts_correctThatValue, e);
		} catch (IOException e) {
			throw DiskFaults.explain(Messages.Drafts_noDraftWasWritten2, place, e);
		}
	}

	private SortedMap<String, String> state() throws IOException {
		return state(archive.view());
	}

	/** @param view the files as they were read */
	private SortedMap<String, String> state(FolderView view) throws IOException {
		return hashes.of(view, new FolderView(root, ArchiveLayout::isPart));
	}

	private Path free(Path folder) {
		for (int n = 1;; n++) {
			Path file = folder.resolve(stem() + (n == 1 ? "" : "-" + n) + END);
			if (!Files.exists(file)) {
				return file;
			}
		}
	}

	/** A readable name, and one that no other archive has. */
	private String stem() {
		MessageDigest digest = Sha256.begin();
		digest.update(root.toString().getBytes(StandardCharsets.UTF_8));
		String name = root.getFileName() == null ? "archive" : root.getFileName().toString();
		return (name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name) + '-'
				+ Sha256.hex(digest).substring(0, HASH_DIGITS);
	}

	/** All in a folder, the newest first, also those that do not fit or are damaged. */
	public synchronized List<Draft> all(Path folder) throws IOException {
		List<Draft> drafts = new ArrayList<>();
		Set<Path> replaced = new HashSet<>();
		String stem = stem();
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder.toAbsolutePath().normalize(), file -> {
			String name = file.getFileName().toString();
			return name.startsWith(stem) && name.substring(stem.length()).matches("(-[0-9]+)?\\.draft");
		})) {
			for (Path file : files) {
				drafts.add(look(file, replaced));
			}
		} catch (NoSuchFileException e) {
			return List.of();
		}
		drafts.removeIf(draft -> replaced.contains(draft.file()));
		drafts.sort(Comparator.comparing(Draft::written).reversed().thenComparing(Draft::file));
		return drafts;
	}

	/** The newest in a folder. */
	public Optional<Draft> newest(Path folder) throws IOException {
		return all(folder).stream().findFirst();
	}

	/**
	 * Drafts of earlier sessions that somebody is still to decide about, the newest first. What was brought back in this
	 * session is not among them. A draft of what the archive holds already is deleted.
	 */
	public synchronized List<Draft> pending(Path folder) throws IOException {
		List<Draft> pending = new ArrayList<>();
		for (Draft draft : all(folder)) {
			if (draft.file().equals(own) || broughtBack.contains(draft.file())) {
				continue;
			}
			if (draft.fit() == Draft.Fit.SAVED) {
				discardWithReplaced(draft);
			} else {
				pending.add(draft);
			}
		}
		return pending;
	}

	/** Those that it was to replace first: whatever ends this, none of them comes to light again. */
	private void discardWithReplaced(Draft draft) throws IOException {
		try {
			for (String name : DraftFile.read(draft.file()).replaces()) {
				delete(draft.file().resolveSibling(name));
			}
			delete(draft.file());
		} catch (IOException e) {
			throw DiskFaults.explain(Messages.Drafts_theDraftWasNotDiscarded, draft.file().getParent(), e);
		}
	}

	private Draft look(Path file, Set<Path> replaced) throws IOException {
		DraftFile draft;
		try {
			draft = DraftFile.read(file);
		} catch (DraftFile.BrokenException e) {
			Instant changed = Files.getLastModifiedTime(file).toInstant();
			return new Draft(file, Draft.Fit.DAMAGED, e.getMessage(), changed, Optional.empty(), "", List.of());
		}
		String reason = obstacle(draft);
		SortedMap<String, String> state = state();
		Draft.Fit fit = state != null && draft.isIn(state) ? Draft.Fit.SAVED
				: reason.isEmpty() ? Draft.Fit.FITS : Draft.Fit.OTHER_STATE;
		draft.replaces().forEach(name -> replaced.add(file.resolveSibling(name)));
		return new Draft(file, fit, fit == Draft.Fit.SAVED ? Messages.Drafts_theArchiveHoldsItAlready : reason,
				draft.by().since(),
				Optional.of(draft.by()), draft.person(), List.copyOf(draft.entries().keySet()));
	}

	/** Why a sound draft can not be applied; empty if it can. */
	private String obstacle(DraftFile draft) throws IOException {
		SortedMap<String, String> state = state();
		if (state == null) {
			return Messages.Drafts_theArchiveWasChangedBy;
		}
		if (draft.base() == null) {
			return Messages.Drafts_theArchiveWasChangedBy2;
		}
		return draft.base().equals(StateHashes.digest(state)) ? ""
				: Messages.Drafts_theArchiveWasChangedSince;
	}

	/**
	 * The change that brings a draft back, for an undo stack; {@link #apply} does it at once. Objects that the draft does
	 * not change stay the same objects. As long as the change is made, the draft of this session has it too, and
	 * {@link OpenArchive#save} removes both; the change undone, the draft is pending as before.
	 *
	 * @throws ArchiveException for a draft that does not fit or is damaged, which stays where it is; where the archive is
	 *                          read-only; where the model has changes that were not saved
	 */
	public synchronized DraftChange change(Draft draft) throws IOException {
		archive.requireWritable();
		archive.requireUnmodified();
		Loaded wanted = ArchiveReader.read(new ChangedFiles(archive.view(), changes(draft)), store.migrations(),
				ArchiveReader.VOUCHED);
		if (!wanted.damages().isEmpty()) {
			throw refused(draft, wanted.damages().get(0).toString());
		}
		for (Resource part : wanted.parts().values()) {
			part.getContents().clear();
		}
		wanted.archive().eResource().getContents().clear();
		return new DraftChange(new ModelPatch(archive.archive(), wanted.archive()),
				made -> broughtBack(draft.file(), made));
	}

	private synchronized void broughtBack(Path file, boolean made) {
		if (made) {
			broughtBack.add(file);
		} else {
			broughtBack.remove(file);
		}
	}

	/** Brings a draft back: its changes are changes of the model that are not saved. Refuses what {@link #change} does. */
	public void apply(Draft draft) throws IOException {
		change(draft).apply();
	}

	/** What a draft that fits would change of the archive as it is on disk; throws what {@link #change} does for one that does not. */
	public synchronized ArchiveDiff difference(Draft draft) throws IOException {
		return History.difference(archive.view(), changes(draft));
	}

	/** The files that a draft would change, null for those that it would delete. */
	private SortedMap<String, byte[]> changes(Draft draft) throws IOException {
		DraftFile file;
		SortedMap<String, byte[]> changes = new TreeMap<>();
		try {
			file = DraftFile.read(draft.file());
			for (String path : file.entries().keySet()) {
				changes.put(path, file.entries().get(path).isGone() ? null : file.content(path));
			}
		} catch (DraftFile.BrokenException e) {
			throw refused(draft, e.getMessage());
		} catch (IOException e) {
			throw DiskFaults.explain(Messages.Drafts_theDraftWasNotApplied, draft.file().getParent(), e);
		}
		String obstacle = obstacle(file);
		if (!obstacle.isEmpty()) {
			throw refused(draft, obstacle);
		}
		return changes;
	}

	private static ArchiveException refused(Draft draft, String reason) {
		return new ArchiveException(Words.bind(Messages.Drafts_theDraftWasNotApplied2, draft.file(), reason),
				Messages.Drafts_itLiesThereAsIt);
	}

	/** Deletes a draft, of this or an earlier session. Nothing else ever deletes one of an earlier session that was not applied. */
	public synchronized void discard(Draft draft) throws IOException {
		try {
			delete(draft.file());
		} catch (IOException e) {
			throw DiskFaults.explain(Messages.Drafts_theDraftWasNotDiscarded, draft.file().getParent(), e);
		}
	}

	/** Deletes the draft of this session: the model is again as it was saved. Those that it was to replace come to light again. */
	public synchronized void discardOwn() throws IOException {
		outdated = taken;
		if (own != null) {
			delete(own);
		}
	}

	/** Deletes the drafts of what is not saved, at the person's word: that of this session, and those that were brought back. */
	public synchronized void discardUnsaved() throws IOException {
		for (Path file : List.copyOf(broughtBack)) {
			delete(file); // before the draft that hides them
		}
		discardOwn();
	}

	private void delete(Path file) throws IOException {
		if (Files.exists(file)) {
			store.disk().delete(file);
			store.disk().syncFolder(file.getParent());
		}
		broughtBack.remove(file);
		if (file.equals(own)) {
			own = null;
			ownSummary = null;
		}
	}

	/**
	 * The model is about to be saved. Where there are drafts of it, that of this session gets the same content first: should the
	 * program end before {@link #saved}, the next one sees that the archive holds it.
	 */
	synchronized void saving() {
		Path any = own != null ? own : broughtBack.stream().findFirst().orElse(null);
		if (any != null && archive.isModified()) {
			try {
				write(take(any.getParent(), ownPerson));
			} catch (IOException e) {
				// it is for comfort: what matters is the save
			}
		}
	}

	/** What the drafts held is in the archive now. */
	synchronized void saved() {
		try {
			discardUnsaved();
		} catch (IOException e) {
			// the next session sees that it is saved
		}
	}
}
