package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;

/** Opens an archive, says what is the matter with it, and closes it whatever happens. */
final class ArchiveWork {

	/** What is done with it. */
	@FunctionalInterface
	interface Work {
		void on(OpenArchive archive) throws Exception;
	}

	private ArchiveWork() {
	}

	static void run(SurveyCommand command, Path folder, Mode mode, Work work) throws Exception {
		try (OpenArchive archive = new ArchiveStore().open(folder, mode)) {
			archive.damages().forEach(damage -> command.err().println("cairnfield: damaged: " + damage));
			archive.notices().forEach(command::note);
			if (mode == Mode.EDIT && archive.readOnlyReason().isPresent()) {
				throw new ArchiveException(folder + " cannot be changed: " + archive.readOnlyReason().get(), "nothing was changed");
			}
			work.on(archive);
		}
	}

	/** Saves and makes a save point; tells which, for a person. */
	static String record(OpenArchive archive, Person person, String note) throws Exception {
		archive.save();
		return archive.savePoint(PersonArgument.orUser(person), note)
				.map(point -> "save point " + point.shortId() + ": " + point.summary()).orElse("nothing changed");
	}

	/** The split of that id; where none is named, the only one. */
	static Split split(Archive archive, String id) throws ArchiveException {
		List<Split> splits = archive.getSplits();
		if (splits.isEmpty()) {
			throw new ArchiveException("the archive has no split" + (id == null ? "" : " '" + id + "'"), "make one with \"split --archive\"");
		}
		if (id == null && splits.size() == 1) {
			return splits.get(0);
		}
		String ids = "its splits are " + splits.stream().map(Split::getId).collect(Collectors.joining(", "));
		if (id == null) {
			throw new ArchiveException("which split of the archive is meant has to be named, with --split", ids);
		}
		return splits.stream().filter(split -> id.equals(split.getId())).findFirst()
				.orElseThrow(() -> new ArchiveException("the archive has no split '" + id + "'", ids));
	}
}
