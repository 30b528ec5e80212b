package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;

/** Does what a journal says, however much of it was done before. */
final class Applying {

	private final Disk disk;
	private final Path root;
	private final Set<Path> touched = new LinkedHashSet<>();

	Applying(Disk disk, Path root) {
		this.disk = disk;
		this.root = root;
	}

	/** All steps; afterwards they survive a loss of power. */
	void apply(Journal journal) throws IOException {
		for (Journal.Step step : journal.steps()) {
			Path target = Places.inside(root, step.path());
			if (step.deletes()) {
				disk.delete(target);
				touched.add(target.getParent());
			} else {
				Path pending = Places.pendingFile(root, step.pending());
				if (Places.isFile(pending)) {
					createFolders(target.getParent());
					disk.move(pending, target);
					touched.add(target.getParent());
				} // else it was moved before; recovery has made sure of that
			}
		}
		for (Path folder : touched) {
			if (Places.isFolder(folder)) { // a deletion may have met a folder that never was
				disk.syncFolder(folder);
			}
		}
		touched.clear();
	}

	/** The record goes last, once nothing needs it. */
	void forget() throws IOException {
		disk.delete(Journal.file(root));
		disk.syncFolder(Places.privateFolder(root));
	}

	private void createFolders(Path folder) throws IOException {
		Deque<Path> missing = new ArrayDeque<>();
		for (Path step = folder; !step.equals(root) && !Places.isFolder(step); step = step.getParent()) {
			missing.push(step);
		}
		for (Path step : missing) {
			disk.createFolder(step);
			touched.add(step.getParent());
		}
	}
}
