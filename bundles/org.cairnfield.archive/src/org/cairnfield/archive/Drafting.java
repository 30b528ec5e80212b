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
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.ChangedFiles;
import org.cairnfield.archive.internal.disk.DiskFaults;
import org.cairnfield.archive.internal.disk.DraftFile;
import org.cairnfield.archive.internal.disk.DraftWriter;
import org.cairnfield.archive.internal.disk.FolderLock;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.Hashes;
import org.cairnfield.archive.internal.disk.StateHashes;
import org.cairnfield.archive.internal.merge.Becoming;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.Layout;
import org.eclipse.emf.ecore.resource.Resource;

/**
 * The drafts of one open archive. One file a draft, see {@link DraftFile}: the files that a save would write, sealed, and
 * put in place by one rename. It names the state on disk that it was based on by a digest of all files; only on that state
 * can it be applied. A session overwrites none but its own draft, so that one from before stays until somebody decides.
 */
final class Drafting {

	private static final String END = ".draft";
	private static final int LONGEST_NAME = 40;
	private static final int HASH_DIGITS = 12;

	private final Path root;
	private final ArchiveStore store;
	private final StateHashes hashes = new StateHashes(path -> Layout.kind(path) != null);
	private Path own;
	private String ownSummary;

	Drafting(Path root, ArchiveStore store) {
		this.root = root;
		this.store = store;
	}

	void write(Path folder, Loaded loaded, FolderView view) throws IOException {
		Path place = folder.toAbsolutePath().normalize();
		if (place.startsWith(root)) {
			throw new ArchiveException("no draft was written: " + place + " is in the archive", "keep drafts beside the archive");
		}
		try {
			Files.createDirectories(place);
			Path file = own != null && place.equals(own.getParent()) ? own : free(place);
			try (DraftWriter writer = DraftWriter.begin(store.disk(), file)) {
				new Saving(loaded, view).tell(writer);
				SortedMap<String, String> state = state(view);
				String base = state == null ? null : StateHashes.digest(state);
				String summary = base + writer.summary();
				if (!file.equals(own) || !summary.equals(ownSummary) || !Files.exists(file)) {
					writer.finish(root, FolderLock.thisProcess(store.clock().instant()), base);
				}
				own = file;
				ownSummary = summary;
			}
		} catch (IllegalArgumentException e) {
			throw new ArchiveException("no draft was written: " + e.getMessage(), "correct that value", e);
		} catch (IOException e) {
			throw DiskFaults.explain("no draft was written", place, e);
		}
	}

	private SortedMap<String, String> state(FolderView view) throws IOException {
		return hashes.of(view, new FolderView(root, Layout::isPart));
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
		MessageDigest digest = Hashes.sha256();
		digest.update(root.toString().getBytes(StandardCharsets.UTF_8));
		String name = root.getFileName() == null ? "archive" : root.getFileName().toString();
		return (name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name) + '-'
				+ Hashes.hex(digest).substring(0, HASH_DIGITS);
	}

	/** Newest first. */
	List<Draft> list(Path folder, FolderView view) throws IOException {
		List<Draft> drafts = new ArrayList<>();
		String stem = stem();
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder.toAbsolutePath().normalize(), file -> {
			String name = file.getFileName().toString();
			return name.startsWith(stem) && name.substring(stem.length()).matches("(-[0-9]+)?\\.draft");
		})) {
			for (Path file : files) {
				drafts.add(look(file, view));
			}
		} catch (NoSuchFileException e) {
			return List.of();
		}
		drafts.sort(Comparator.comparing(Draft::written).reversed().thenComparing(Draft::file));
		return drafts;
	}

	private Draft look(Path file, FolderView view) throws IOException {
		DraftFile draft;
		try {
			draft = DraftFile.read(file);
		} catch (DraftFile.BrokenException e) {
			Instant changed = Files.getLastModifiedTime(file).toInstant();
			return new Draft(file, Draft.Fit.DAMAGED, e.getMessage(), changed, Optional.empty(), List.of());
		}
		String reason = obstacle(draft, view);
		SortedMap<String, String> state = state(view);
		Draft.Fit fit = reason.isEmpty() ? Draft.Fit.FITS
				: state != null && draft.isIn(state) ? Draft.Fit.SAVED : Draft.Fit.OTHER_STATE;
		return new Draft(file, fit, fit == Draft.Fit.SAVED ? "the archive holds it already" : reason, draft.by().since(),
				Optional.of(draft.by()), List.copyOf(draft.entries().keySet()));
	}

	/** Why a sound draft can not be applied; empty if it can. */
	private String obstacle(DraftFile draft, FolderView view) throws IOException {
		SortedMap<String, String> state = state(view);
		if (state == null) {
			return "the archive was changed by another program since it was read";
		}
		if (draft.base() == null) {
			return "the archive was changed by another program before the draft was written";
		}
		return draft.base().equals(StateHashes.digest(state)) ? "" : "the archive was changed since the draft was written";
	}

	DraftChange change(Draft draft, Loaded loaded, FolderView view) throws IOException {
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
			throw DiskFaults.explain("the draft was not applied", draft.file().getParent(), e);
		}
		String obstacle = obstacle(file, view);
		if (!obstacle.isEmpty()) {
			throw refused(draft, obstacle);
		}
		Loaded wanted = ArchiveReader.read(new ChangedFiles(view, changes), store.migrations(), ArchiveReader.VOUCHED);
		if (!wanted.damages().isEmpty()) {
			throw refused(draft, wanted.damages().get(0).toString());
		}
		for (Resource part : wanted.parts().values()) {
			part.getContents().clear();
		}
		wanted.archive().eResource().getContents().clear();
		return new DraftChange(new Becoming(loaded.archive(), wanted.archive()));
	}

	private static ArchiveException refused(Draft draft, String reason) {
		return new ArchiveException("the draft " + draft.file() + " was not applied: " + reason,
				"it lies there as it was; discard it if nobody needs it");
	}

	/** From now on the draft is this session's. */
	void adopt(Draft draft) {
		own = draft.file();
		ownSummary = null;
	}

	void discard(Draft draft) throws IOException {
		try {
			store.disk().delete(draft.file());
			store.disk().syncFolder(draft.file().getParent());
		} catch (IOException e) {
			throw DiskFaults.explain("the draft was not discarded", draft.file().getParent(), e);
		}
		forget(draft.file());
	}

	private void forget(Path file) {
		if (file.equals(own)) {
			own = null;
			ownSummary = null;
		}
	}

	/** What the draft of this session holds is in the archive now. */
	void saved() {
		if (own != null) {
			try {
				store.disk().delete(own);
			} catch (IOException e) {
				return; // it will be seen that it is saved
			}
			forget(own);
		}
	}
}
