package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;

import org.cairnfield.archive.fault.ArchiveException;
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
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.eclipse.emf.ecore.EObject;

/** Brings files back to what they were. Each change happens whole or not at all, as any save. */
final class Restoring {

	private final Path root;
	private final ArchiveStore store;

	Restoring(Path root, ArchiveStore store) {
		this.root = root;
		this.store = store;
	}

	/** All files as at a save point, but for those of releases, which stay. */
	void restore(SavePoint point, boolean damaged) throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			requireGitAtRest(git);
			TreeFiles past = git.files(git.find(point.id()), ArchiveLayout::isPart);
			requireSound(past, "the state " + point.shortId() + " can not be restored");
			if (damaged) {
				keep(git);
			}
			FolderView now = new FolderView(root, ArchiveLayout::isPart);
			try (Save save = Save.begin(store.disk(), root)) {
				for (String path : past.paths()) {
					if (ArchiveLayout.isRelease(path) && now.has(path)) {
						continue; // what is released stays as it is, and so do the gates
					}
					save.put(path, out -> {
						try (InputStream in = past.open(path)) {
							in.transferTo(out);
						}
					});
				}
				for (String path : now.paths()) {
					if (!past.has(path) && !ArchiveLayout.isRelease(path)) {
						save.delete(path);
					}
				}
				save.commit();
			}
		}
	}

	private static void requireGitAtRest(GitFolder git) throws IOException {
		GitFolder.Obstacle obstacle = git.obstacle();
		if (obstacle != null) {
			throw new ArchiveException("nothing was changed: " + obstacle.what(), obstacle.remedy() + ", then try again");
		}
	}

	private Loaded requireSound(FileSource files, String otherwise) throws IOException {
		Loaded loaded = ArchiveReader.read(files, store.migrations(), ArchiveReader.VOUCHED);
		if (!loaded.damages().isEmpty()) {
			throw new ArchiveException(otherwise + ": " + loaded.damages().get(0), "choose another state");
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

	/** Files without what one save point changed. */
	void undo(SavePoint point) throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			requireGitAtRest(git);
			if (point.parents().isEmpty()) {
				throw new ArchiveException(point.shortId() + " is the beginning of the archive", "restore a later state");
			}
			Commit before = git.find(point.parents().get(0));
			FolderView now = new FolderView(root, ArchiveLayout::isPart);
			SortedMap<String, byte[]> changes = Inverse.of(git.files(before, ArchiveLayout::isPart),
					git.files(git.find(point.id()), ArchiveLayout::isPart), now);
			Loaded loaded = requireSound(new ChangedFiles(now, changes), "the change can not be taken back, as the rest would not be sound");
			SortedMap<String, EObject> parts = ArchiveFiles.parts(loaded.archive());
			try (Save save = Save.begin(store.disk(), root)) {
				for (String path : changes.keySet()) {
					put(save, path, changes.get(path), loaded, parts);
				}
				save.commit();
			}
		}
	}

	private static void put(Save save, String path, byte[] content, Loaded loaded, SortedMap<String, EObject> parts)
			throws ArchiveException {
		FileKind kind = ArchiveLayout.kind(path);
		if (content == null) {
			save.delete(path);
		} else if (kind == null) {
			save.put(path, out -> out.write(content));
		} else if (kind == FileKind.STRUCTURE) {
			save.put(path, out -> ArchiveFiles.writeStructure(loaded.archive(), out));
		} else {
			save.put(path, out -> ArchiveFiles.writePart(parts.get(path), out));
		}
	}
}
