package org.cairnfield.archive;

import java.io.IOException;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.internal.disk.Content;
import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What a save would write, of an archive that has changed.
 *
 * @param parts     what may have changed of that which belongs in files of lines, by path
 * @param gone      paths of such files that are to go
 * @param structure content of the structure file; null where it need not be written
 */
record DueFiles(SortedMap<String, EObject> parts, SortedSet<String> gone, Content structure) {

	/**
	 * @param parts     as in {@link ArchiveFiles#parts} of the archive as it is now
	 * @param structure what the structure file is to tell
	 */
	static DueFiles of(Loaded loaded, SortedMap<String, EObject> parts, Archive structure) throws IOException {
		SortedMap<String, EObject> due = new TreeMap<>(parts);
		due.entrySet().removeIf(part -> !isDue(loaded, part.getKey(), part.getValue()));
		SortedSet<String> gone = new TreeSet<>(loaded.parts().keySet());
		gone.removeAll(parts.keySet());
		boolean sameParts = loaded.parts().keySet().equals(parts.keySet());
		boolean restructured = !sameParts || loaded.archive().eResource().isModified()
				|| loaded.outdated().contains(ArchiveLayout.STRUCTURE);
		return new DueFiles(due, gone, restructured ? ArchiveFiles.structure(structure) : null);
	}

	private static boolean isDue(Loaded loaded, String path, EObject root) {
		Resource resource = loaded.parts().get(path);
		return resource == null || resource.isModified() || loaded.outdated().contains(path)
				|| resource.getContents().isEmpty() || resource.getContents().get(0) != root;
	}

	/** The same apart from the model, for another thread. Tables and labels are immutable and shared. */
	DueFiles detached() {
		SortedMap<String, EObject> copies = new TreeMap<>();
		parts.forEach((path, root) -> copies.put(path, EcoreUtil.copy(root)));
		return new DueFiles(copies, gone, structure);
	}

	/**
	 * Tells how the files are to be; the model stays modified.
	 *
	 * @param now the files as they are
	 * @return paths of those that change
	 */
	SortedSet<String> tell(FileSource now, FileChanges changes) throws IOException {
		SortedSet<String> changed = new TreeSet<>();
		for (Map.Entry<String, EObject> part : parts.entrySet()) {
			changed.addAll(ArchiveFiles.put(part.getKey(), part.getValue(), now, changes));
		}
		for (String path : gone) {
			changed.addAll(ArchiveFiles.delete(path, now, changes));
		}
		if (structure != null && changes.put(ArchiveLayout.STRUCTURE, structure)) {
			changed.add(ArchiveLayout.STRUCTURE);
		}
		return changed;
	}
}
