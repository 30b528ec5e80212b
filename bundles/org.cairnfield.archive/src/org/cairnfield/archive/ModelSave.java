package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.SortedSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;
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
		String changed = view.firstDifference(new FolderView(root, ArchiveLayout::isPart),
				path -> ArchiveLayout.kind(path) != null);
		if (changed != null) {
			throw new ArchiveException(
					Words.bind(Messages.ModelSave_nothingWasSavedWasChanged, changed),
					Messages.ModelSave_readTheArchiveAgainWhich);
		}
		SortedMap<String, EObject> parts = ArchiveFiles.parts(loaded.archive());
		SortedSet<String> written;
		try (Save save = Save.begin(disk, root)) {
			written = DueFiles.of(loaded, parts, decisions.toWrite(loaded.archive())).tell(view, save);
			if (decisions.tell(loaded.archive(), root, save)) {
				written.add(ArchiveLayout.GATES);
			}
			save.commit();
		} catch (IllegalArgumentException e) {
			throw new ArchiveException(Words.bind(Messages.ModelSave_nothingWasSaved, e.getMessage()),
					Messages.ModelSave_correctThatValue, e);
		}
		decisions.saved(loaded.archive());
		loaded.saved(parts);
		return written;
	}
}
