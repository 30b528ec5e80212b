package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
import org.cairnfield.archive.internal.merge.GateTexts;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.EObject;

/**
 * How the files of a folder, which are as on my side, become those of both sides. Those of the model follow from the merged
 * model, gates are merged one by one, and plan images that both have changed are kept side by side; of the other files, what
 * only one side has changed is as there. Where both have, the file stays that others have already, which is noted.
 */
final class MergedFiles {

	private final TreeFiles base;
	private final TreeFiles mine;
	private final TreeFiles theirs;
	private final PlanImages images;
	private final String gates;
	private final List<String> notes = new ArrayList<>();

	/**
	 * @param images that both have changed
	 * @param gates  text of the merged file; null where a side has none
	 */
	MergedFiles(TreeFiles base, TreeFiles mine, TreeFiles theirs, PlanImages images, String gates) {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
		this.images = images;
		this.gates = gates;
	}

	/** The gates of three states. */
	static GateTexts gates(TreeFiles base, TreeFiles mine, TreeFiles theirs) throws IOException {
		String before = text(base, ArchiveLayout.GATES);
		String own = text(mine, ArchiveLayout.GATES);
		String others = text(theirs, ArchiveLayout.GATES);
		byte[] both = own == null || others == null ? null
				: LineMerge.merge(utf8(before == null ? "" : before), utf8(own), utf8(others));
		return new GateTexts(before, own, others, both == null ? null : new String(both, StandardCharsets.UTF_8));
	}

	private static byte[] utf8(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
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
		return !Objects.equals(theirs.blob(path), base.blob(path))
				&& !Objects.equals(theirs.blob(path), mine.blob(path));
	}

	private void tellOther(String path, FileChanges changes) throws IOException {
		if (path.equals(ArchiveLayout.GATES) && gates != null) {
			changes.put(path, out -> out.write(utf8(gates)));
			return;
		}
		if (images.concerns(path)) {
			images.tell(path, changes);
			return;
		}
		if (!isChangedThere(path)) {
			return;
		}
		boolean onlyThere = Objects.equals(mine.blob(path), base.blob(path));
		if (onlyThere && !theirs.has(path)) {
			changes.delete(path);
			return;
		}
		if (!theirs.has(path)) {
			notes.add(Words.bind(Messages.MergedFiles_wasRemovedByOthersAnd, path));
			return;
		}
		if (!onlyThere && mine.has(path)) {
			notes.add(Words.bind(Messages.MergedFiles_wasChangedHereAndBy, path));
		}
		byte[] content = bytes(theirs, path);
		changes.put(path, out -> out.write(content));
	}

	/** What a text file says; null where it is not there. */
	static String text(TreeFiles files, String path) throws IOException {
		return files.has(path) ? new String(bytes(files, path), StandardCharsets.UTF_8) : null;
	}

	static byte[] bytes(TreeFiles files, String path) throws IOException {
		try (InputStream in = files.open(path)) {
			return in.readAllBytes();
		}
	}
}
