package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.git.LineMerge;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.EObject;

/**
 * How the files of a folder, which are as on my side, become those of both sides. Those of the model follow from the merged
 * model; of the others, what only one side has changed is as there, and texts are merged line by line. Where that cannot be,
 * the file stays that others have already, which is noted.
 */
final class MergedFiles {

	private final TreeFiles base;
	private final TreeFiles mine;
	private final TreeFiles theirs;
	private final List<String> notes = new ArrayList<>();

	MergedFiles(TreeFiles base, TreeFiles mine, TreeFiles theirs) {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
	}

	/** @param whole whether files are to be written that only my side has changed, too */
	void tell(Archive merged, boolean whole, FileChanges changes) throws IOException {
		SortedMap<String, EObject> parts = ArchiveFiles.parts(merged);
		Set<String> changedThere = new HashSet<>(); // where any part of a survey was changed, the survey was
		for (String path : paths()) {
			if (isChangedThere(path)) {
				changedThere.add(ArchiveLayout.whole(path));
			}
		}
		for (Map.Entry<String, EObject> part : parts.entrySet()) {
			if (whole || !mine.has(part.getKey()) || changedThere.contains(part.getKey())) {
				ArchiveFiles.put(part.getKey(), part.getValue(), mine, changes);
			}
		}
		changes.put(ArchiveLayout.STRUCTURE, out -> ArchiveFiles.writeStructure(merged, out));
		for (String path : paths()) {
			if (ArchiveLayout.kind(path) == null) {
				tellOther(path, changes);
			} else if (!path.equals(ArchiveLayout.STRUCTURE) && !parts.containsKey(ArchiveLayout.whole(path))) {
				changes.delete(path);
			}
		}
	}

	/** What people should know of files that could not be merged. */
	List<String> notes() {
		return notes;
	}

	private SortedSet<String> paths() {
		SortedSet<String> paths = new TreeSet<>();
		mine.paths().forEach(paths::add);
		theirs.paths().forEach(paths::add);
		return paths;
	}

	private boolean isChangedThere(String path) {
		return !Objects.equals(theirs.blob(path), base.blob(path)) && !Objects.equals(theirs.blob(path), mine.blob(path));
	}

	private void tellOther(String path, FileChanges changes) throws IOException {
		if (!isChangedThere(path)) {
			return;
		}
		boolean onlyThere = Objects.equals(mine.blob(path), base.blob(path));
		if (onlyThere && !theirs.has(path)) {
			changes.delete(path);
			return;
		}
		if (!theirs.has(path)) {
			notes.add(path + " was removed by others and changed here; it stays");
			return;
		}
		byte[] content = bytes(theirs, path);
		if (!onlyThere && mine.has(path)) {
			byte[] both = path.endsWith(".txt") ? LineMerge.merge(base.has(path) ? bytes(base, path) : new byte[0], bytes(mine, path), content) : null;
			if (both == null) {
				notes.add(path + " was changed here and by others; theirs stands, and yours is in the save point before");
			} else {
				content = both;
			}
		}
		byte[] written = content;
		changes.put(path, out -> out.write(written));
	}

	private static byte[] bytes(TreeFiles files, String path) throws IOException {
		try (InputStream in = files.open(path)) {
			return in.readAllBytes();
		}
	}
}
