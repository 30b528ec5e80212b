package org.cairnfield.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.merge.GateLines;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.conflict.DecidedLater;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Conflicts over gates, which are a file and no part of the model. One that is decided stays in the model until that is saved,
 * so that the decision can be undone and is in drafts; a save sets the line of the file and drops the conflict.
 */
final class FileDecisions {

	/** Conflicts over lines that were set, which come back where the decision is undone. */
	private final Set<Conflict> written = Collections.newSetFromMap(new IdentityHashMap<>());

	private static List<Conflict> decided(Archive archive) {
		return archive.getConflicts().stream().filter(DecidedLater::isDecided).toList();
	}

	/** The archive as its structure is to be written. */
	Archive toWrite(Archive archive) {
		if (decided(archive).isEmpty()) {
			return archive;
		}
		Archive copy = EcoreUtil.copy(archive);
		copy.getConflicts().removeIf(DecidedLater::isDecided);
		return copy;
	}

	/** Sets the lines that were decided since the last save, or whose decision was undone. Returns whether that changes the file. */
	boolean tell(Archive archive, Path root, FileChanges changes) throws IOException {
		Path file = root.resolve(ArchiveLayout.GATES);
		String before = Files.isRegularFile(file) ? Files.readString(file) : "";
		String text = before;
		for (Conflict conflict : archive.getConflicts()) {
			Optional<Claim> decision = DecidedLater.decision(conflict);
			if (decision.isPresent()) {
				text = GateLines.with(text, conflict.getUnit(), decision.get().getValue());
			} else if (written.contains(conflict)) {
				text = GateLines.with(text, conflict.getUnit(), conflict.getBase());
			}
		}
		byte[] content = text.getBytes(StandardCharsets.UTF_8);
		return !text.equals(before) && changes.put(ArchiveLayout.GATES, out -> out.write(content));
	}

	/** It is saved: what was decided is dropped from the model, silently, since it was over for everybody already. */
	void saved(Archive archive) {
		archive.getConflicts().forEach(written::remove);
		List<Conflict> done = decided(archive);
		if (!done.isEmpty()) {
			written.addAll(done);
			archive.eSetDeliver(false);
			archive.getConflicts().removeAll(done);
			archive.eSetDeliver(true);
		}
	}
}
