package org.cairnfield.ui.release.internal.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.study.Study;
import org.cairnfield.curation.study.StudyListener;
import org.cairnfield.curation.study.StudyMap;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.curation.study.StudyRecords;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudySettings;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.model.Archive;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.widgets.Display;

/**
 * A study of the archive on show and of others, as a job does it. Rows that are done are kept beside the workspace, so that one which
 * was cancelled goes on where it was.
 *
 * @param name    of the archive on show
 * @param archive a copy of it; null where none is
 * @param others  folders of other archives
 */
record StudyWork(String name, Archive archive, List<Path> others, Duration most) {

	/** Of all that is drawn. */
	static final long SEED = 1;

	/** @param begun hears what is being done, and {@code done} what has been found so far, on the user interface thread */
	StudyTable run(Consumer<String> begun, Consumer<StudyTable> done, Workers workers) throws Exception {
		List<StudyMap> maps = new ArrayList<>();
		if (archive != null) {
			maps.add(StudyMap.of(name, archive, SEED));
		}
		for (Path other : others) {
			try (OpenArchive open = new ArchiveStore().open(other, Mode.READ)) {
				String called = other.getFileName().toString();
				boolean taken = maps.stream().anyMatch(map -> map.name().equals(called));
				maps.add(StudyMap.of(taken ? other.toString() : called, open.archive(), SEED));
			}
		}
		List<StudyRow> rows = new ArrayList<>();
		return Study.run(maps, new StudySettings(StudyMethod.all(), most, SEED), StudyRecords.in(folder()),
				new StudyListener() {
					@Override
					public void begun(Step step) {
						workers.progress().begin(step.toString(), 1);
						Display.getDefault().asyncExec(() -> begun.accept(step.toString()));
					}

					@Override
					public void done(StudyRow row, boolean kept) {
						rows.add(row);
						StudyTable sofar = StudyTable.of(rows, SEED);
						Display.getDefault().asyncExec(() -> done.accept(sofar));
					}
				}, workers);
	}

	private static Path folder() throws IOException {
		return Files.createDirectories(
				Platform.getStateLocation(Platform.getBundle("org.cairnfield.ui.release")).append("studies").toPath());
	}
}
