package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;

/** Brings the files of an archive to what its model says, those that have changed. */
final class ModelSave {

	private final Loaded loaded;
	private final FolderView view;

	/** @param view the files as they were when the archive was read or saved */
	ModelSave(Loaded loaded, FolderView view) {
		this.loaded = loaded;
		this.view = view;
	}

	static boolean isModified(Loaded loaded) {
		return loaded.archive().eResource().isModified()
				|| loaded.parts().values().stream().anyMatch(Resource::isModified);
	}

	/** @return paths of the files that differ now, all of them or none */
	SortedSet<String> save(Disk disk, Path root, FileDecisions decisions) throws IOException {
		String changed = view.firstDifference(new FolderView(root, ArchiveLayout::isPart), path -> ArchiveLayout.kind(path) != null);
		if (changed != null) {
			throw new ArchiveException("nothing was saved: " + changed + " was changed by another program since it was read",
					"read the archive again, which drops what was not saved, and make the change once more");
		}
		SortedMap<String, EObject> parts = ArchiveFiles.parts(loaded.archive());
		SortedSet<String> written;
		try (Save save = Save.begin(disk, root)) {
			written = tell(parts, decisions.toWrite(loaded.archive()), save);
			if (decisions.tell(loaded.archive(), root, save)) {
				written.add(ArchiveLayout.GATES);
			}
			save.commit();
		} catch (IllegalArgumentException e) {
			throw new ArchiveException("nothing was saved: " + e.getMessage(), "correct that value", e);
		}
		decisions.saved(loaded.archive());
		loaded.saved(parts);
		return written;
	}

	/** Tells how the files are to be, those that may have changed; the model stays modified. */
	void tell(FileChanges changes) throws IOException {
		tell(ArchiveFiles.parts(loaded.archive()), loaded.archive(), changes);
	}

	private SortedSet<String> tell(SortedMap<String, EObject> parts, Archive structure, FileChanges changes) throws IOException {
		SortedSet<String> changed = new TreeSet<>();
		for (Map.Entry<String, EObject> part : parts.entrySet()) {
			if (isDue(part.getKey(), part.getValue())) {
				changed.addAll(ArchiveFiles.put(part.getKey(), part.getValue(), view, changes));
			}
		}
		for (String path : loaded.parts().keySet()) {
			if (!parts.containsKey(path)) {
				changed.addAll(ArchiveFiles.delete(path, view, changes));
			}
		}
		boolean sameParts = loaded.parts().keySet().equals(parts.keySet());
		if ((!sameParts || loaded.archive().eResource().isModified() || loaded.outdated().contains(ArchiveLayout.STRUCTURE))
				&& changes.put(ArchiveLayout.STRUCTURE, out -> ArchiveFiles.writeStructure(structure, out))) {
			changed.add(ArchiveLayout.STRUCTURE);
		}
		return changed;
	}

	private boolean isDue(String path, EObject root) {
		Resource resource = loaded.parts().get(path);
		return resource == null || resource.isModified() || loaded.outdated().contains(path)
				|| resource.getContents().isEmpty() || resource.getContents().get(0) != root;
	}
}
