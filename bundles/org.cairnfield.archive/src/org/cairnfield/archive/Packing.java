package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.internal.disk.FolderLock;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.core.task.Progress;

/** Keeps the history small. Done when an archive is closed, so that no save point takes longer for it. */
final class Packing {

	private Packing() {
	}

	static boolean isDue(Path root, List<Damage> damages) {
		if (!damages.isEmpty() || !GitTraces.isRepository(root)) {
			return false;
		}
		try (GitFolder git = GitFolder.open(root)) {
			return git.isRepackDue();
		} catch (IOException | RuntimeException e) {
			return false; // whoever opens the archive next hears what is wrong
		}
	}

	static void whereDue(Path root, FolderLock lock, List<Damage> damages, Progress progress) {
		if (!isDue(root, damages)) {
			return;
		}
		try {
			lock.check();
			try (GitFolder git = GitFolder.open(root)) {
				git.repack(progress);
			}
		} catch (IOException | RuntimeException e) {
			// nothing depends on it: the history is what it was, and whoever closes the archive next tries again
		}
	}
}
