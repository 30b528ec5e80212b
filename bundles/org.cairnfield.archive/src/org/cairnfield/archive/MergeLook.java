package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.MergeLoss;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.HeadTrace;
import org.cairnfield.archive.internal.disk.SeenMerges;

/** Looks whether merges of plain Git have dropped verdicts, waivers or surveys; once for each save point. */
final class MergeLook {

	private MergeLook() {
	}

	/**
	 * What merges have dropped and nobody has put back.
	 *
	 * @param locked whether the lock of the folder is held, so that the look can be noted down
	 */
	static List<Damage> damages(Path root, boolean locked) throws IOException {
		String seen = SeenMerges.read(root);
		String last = GitTraces.isRepository(root) ? HeadTrace.of(root).id() : null;
		if (last == null || last.equals(seen)) {
			return List.of();
		}
		List<Damage> damages;
		try (History history = History.of(root)) {
			damages = history.check().mergeLosses(history.find(last), seen).stream().map(MergeLoss::damage).toList();
		} catch (IOException | RuntimeException e) {
			return List.of(); // a history that cannot be read is damage of its own
		}
		if (damages.isEmpty() && locked) {
			note(root, last);
		}
		return damages;
	}

	/** A save point of ours is no merge. */
	static void recorded(Path root, String before, String made) throws IOException {
		if (before == null || before.equals(SeenMerges.read(root))) {
			note(root, made);
		}
	}

	private static void note(Path root, String id) {
		try {
			SeenMerges.write(root, id);
		} catch (IOException e) {
			// then the next who opens the archive looks again
		}
	}
}
