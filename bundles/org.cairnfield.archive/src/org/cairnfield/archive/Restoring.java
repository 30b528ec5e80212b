package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.MergeLoss;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.ChangedFiles;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.archive.internal.disk.SaveRecovery;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.merge.Inverse;
import org.cairnfield.archive.internal.merge.KeptLedgers;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.resource.WholeSurveys;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.LedgerLines;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.EObject;

/** Brings files back to what they were. Each change happens whole or not at all, as any save. */
final class Restoring {

	private final Path root;
	private final ArchiveStore store;

	Restoring(Path root, ArchiveStore store) {
		this.root = root;
		this.store = store;
	}

	/**
	 * All files as at a save point, but for those of releases and people and for comments, which stay, and for ledgers, which only
	 * grow: what has been decided since is taken back by lines of its own, in the name of who restores.
	 */
	void restore(SavePoint point, boolean damaged, Person person) throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			requireGitAtRest(git);
			TreeFiles past = git.files(git.find(point.id()), ArchiveLayout::isPart);
			Archive restored = requireSound(past, Words.bind(Messages.Restoring_theStateCanNotBe, point.shortId()))
					.archive();
			if (damaged) {
				keep(git);
			}
			TreeFiles last = git.files(git.head(), ArchiveLayout::isPart);
			KeptLedgers kept = KeptLedgers.of(last, store.migrations());
			KeptLedgers wanted = KeptLedgers.of(past, store.migrations());
			addDropped(kept, git, git.head().id());
			addDropped(wanted, git, point.id());
			kept.addMissing(wanted);
			kept.settle(wanted, person.name(), store.clock().instant());
			boolean added = kept.nameIn(restored) | KeptComments.add(restored, last, store.migrations());
			FolderView now = new FolderView(root, ArchiveLayout::isPart);
			try (Save save = Save.begin(store.disk(), root)) {
				for (String path : past.paths()) {
					if (ArchiveLayout.outlivesRestoring(path) && now.has(path)) {
						continue; // what is released stays as it is, and so do the gates and the list of people
					}
					if (added && path.equals(ArchiveLayout.STRUCTURE)) {
						save.put(path, out -> ArchiveFiles.writeStructure(restored, out));
					} else if (kept.at(path) == null) {
						copy(save, path, past);
					}
				}
				put(save, kept, last);
				for (String path : now.paths()) {
					if (!past.has(path) && !ArchiveLayout.outlivesRestoring(path) && kept.at(path) == null) {
						save.delete(path);
					}
				}
				save.commit();
			}
		}
	}

	/**
	 * Puts back verdicts and comments that the folder has lost since the last save point, so that it can be recorded before
	 * something is done to it.
	 *
	 * @return whether that changed a file
	 */
	boolean putBack() throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			TreeFiles last = git.files(git.head(), ArchiveLayout::isPart);
			FolderView now = new FolderView(root, ArchiveLayout::isPart);
			if (hasAll(now, last) && KeptComments.hasAll(now, last, store.migrations())) {
				return false;
			}
			KeptLedgers kept = KeptLedgers.of(last, store.migrations());
			kept.addMissing(KeptLedgers.of(now, store.migrations()));
			Archive archive = ArchiveReader.read(now, store.migrations(), ArchiveReader.VOUCHED).archive();
			boolean added = kept.nameIn(archive) | KeptComments.add(archive, last, store.migrations());
			try (Save save = Save.begin(store.disk(), root)) {
				put(save, kept, last);
				if (added) {
					save.put(ArchiveLayout.STRUCTURE, out -> ArchiveFiles.writeStructure(archive, out));
				}
				save.commit();
				return true;
			}
		}
	}

	private static boolean hasAll(FileSource now, FileSource before) throws IOException {
		for (String path : KeptLedgers.paths(before)) {
			if (!new HashSet<>(lines(now, path)).containsAll(lines(before, path))) {
				return false;
			}
		}
		return true;
	}

	private static List<String> lines(FileSource files, String path) throws IOException {
		if (!files.has(path)) {
			return List.of();
		}
		try (InputStream in = files.open(path)) {
			return LedgerLines.of(in.readAllBytes());
		}
	}

	/** Takes in what merges on the way to a state have dropped from its ledgers. */
	private void addDropped(KeptLedgers ledgers, GitFolder git, String commit) throws IOException {
		try (History history = History.of(root)) {
			for (MergeLoss loss : history.check().mergeLosses(history.find(commit), null)) {
				if (loss.kind() == MergeLoss.Kind.VERDICT) {
					ledgers.addMissing(ledgers(git, loss.parent().id()).only(loss.file(), loss.names()));
				}
			}
		}
	}

	/** Ledgers that have not grown keep their very bytes. */
	private static void put(Save save, KeptLedgers kept, FileSource before) throws IOException {
		for (String path : kept.paths()) {
			if (kept.at(path) != null && kept.isGrown(path)) {
				save.put(path, out -> ArchiveFiles.writePart(kept.at(path), out));
			} else if (kept.at(path) != null) {
				copy(save, path, before);
			}
		}
	}

	private static void copy(Save save, String path, FileSource from) throws IOException {
		save.put(path, out -> {
			try (InputStream in = from.open(path)) {
				in.transferTo(out);
			}
		});
	}

	private static void requireGitAtRest(GitFolder git) throws IOException {
		GitFolder.Obstacle obstacle = git.obstacle();
		if (obstacle != null) {
			throw new ArchiveException(Words.bind(Messages.Restoring_nothingWasChanged, obstacle.what()),
					Words.bind(Messages.Restoring_thenTryAgain, obstacle.remedy()));
		}
	}

	private Loaded requireSound(FileSource files, String otherwise) throws IOException {
		Loaded loaded = ArchiveReader.read(files, store.migrations(), ArchiveReader.VOUCHED);
		if (!loaded.damages().isEmpty()) {
			throw new ArchiveException(otherwise + ": " + loaded.damages().get(0),
					Messages.Restoring_chooseAnotherState);
		}
		return loaded;
	}

	/** Copies what no save point has, damaged or not. */
	private void keep(GitFolder git) throws IOException {
		Path kept = Places.newFolderForDamaged(root);
		FolderView now = new FolderView(root, ArchiveLayout::isPart);
		TreeFiles last = git.files(git.head(), ArchiveLayout::isPart);
		for (Map.Entry<String, String> blob : git.blobs(now.files()).entrySet()) {
			if (!blob.getValue().equals(last.blob(blob.getKey()))) {
				Path copy = kept.resolve(blob.getKey());
				Files.createDirectories(copy.getParent());
				Files.copy(now.files().get(blob.getKey()), copy);
			}
		}
		SaveRecovery.setAside(root, kept);
	}

	/** Files without what one save point changed. Verdicts that it brought are taken back in the name of who undoes it. */
	void undo(SavePoint point, Person person) throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			requireGitAtRest(git);
			if (point.parents().isEmpty()) {
				throw new ArchiveException(Words.bind(Messages.Restoring_isTheBeginningOfThe, point.shortId()),
						Messages.Restoring_restoreALaterState);
			}
			Commit before = git.find(point.parents().get(0));
			FolderView now = new FolderView(root, ArchiveLayout::isPart);
			SortedMap<String, byte[]> changes = Inverse.of(git.files(before, ArchiveLayout::isPart),
					git.files(git.find(point.id()), ArchiveLayout::isPart), now);
			SortedMap<String, byte[]> alone = new TreeMap<>(changes);
			if (changes.containsKey(ArchiveLayout.STRUCTURE)) { // which names no ledgers then
				KeptLedgers.paths(now).forEach(path -> alone.put(path, null));
			}
			SortedMap<String, List<String>> surveyParts = WholeSurveys.parts(now);
			for (String path : changes.keySet()) { // which brings all samples of a survey in one file
				surveyParts.getOrDefault(path, List.of()).forEach(part -> alone.put(part, null));
			}
			Loaded loaded = requireSound(new ChangedFiles(now, alone),
					Messages.Restoring_theChangeCanNotBe);
			KeptLedgers kept = ledgersWithout(point, git, now, person);
			boolean added = kept.nameIn(loaded.archive()) | KeptComments.add(loaded.archive(), now, store.migrations());
			SortedMap<String, EObject> parts = ArchiveFiles.parts(loaded.archive());
			try (Save save = Save.begin(store.disk(), root)) {
				if (added && !changes.containsKey(ArchiveLayout.STRUCTURE)) {
					save.put(ArchiveLayout.STRUCTURE, out -> ArchiveFiles.writeStructure(loaded.archive(), out));
				}
				for (String path : changes.keySet()) {
					put(save, path, changes.get(path), loaded, parts, now);
				}
				put(save, kept, now);
				save.commit();
			}
		}
	}

	/** Only what none of the states before had is a save point's own: what a merge brought together stays. */
	private KeptLedgers ledgersWithout(SavePoint point, GitFolder git, FolderView now, Person person)
			throws IOException {
		KeptLedgers kept = KeptLedgers.of(now, store.migrations());
		KeptLedgers changed = ledgers(git, point.id());
		KeptLedgers own = changed;
		KeptLedgers dropped = KeptLedgers.none();
		for (String parent : point.parents()) {
			KeptLedgers before = ledgers(git, parent);
			own = own.without(before);
			dropped.addMissing(before.without(changed));
		}
		KeptLedgers wanted = kept.without(own);
		kept.addMissing(dropped);
		wanted.addMissing(dropped);
		kept.settle(wanted, person.name(), store.clock().instant());
		return kept;
	}

	private KeptLedgers ledgers(GitFolder git, String commit) throws IOException {
		return KeptLedgers.of(git.files(git.find(commit), ArchiveLayout::isPart), store.migrations());
	}

	private static void put(Save save, String path, byte[] content, Loaded loaded, SortedMap<String, EObject> parts,
			FileSource now)
			throws IOException {
		FileKind kind = ArchiveLayout.kind(path);
		if (content == null) {
			ArchiveFiles.delete(path, now, save);
		} else if (kind == null) {
			save.put(path, out -> out.write(content));
		} else if (kind == FileKind.STRUCTURE) {
			save.put(path, out -> ArchiveFiles.writeStructure(loaded.archive(), out));
		} else {
			ArchiveFiles.put(path, parts.get(path), now, save);
		}
	}
}
