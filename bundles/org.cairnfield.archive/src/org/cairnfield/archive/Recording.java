package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.DiskFaults;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.text.Layout;

/** Makes save points of what is on disk. */
final class Recording {

	private final Path root;
	private final Clock clock;

	Recording(Path root, Clock clock) {
		this.root = root;
		this.clock = clock;
	}

	/**
	 * @param opening first line of the message in place of counts, or empty
	 * @return empty if nothing has changed since the last save point
	 */
	Optional<SavePoint> record(String opening, Person person, String note) throws IOException {
		try {
			if (!GitTraces.isRepository(root)) {
				GitFolder.init(root).close();
			}
			try (GitFolder git = GitFolder.open(root); History history = History.of(root)) {
				String obstacle = git.obstacle();
				if (obstacle != null) {
					throw new ArchiveException("the files are saved, but no save point was made: " + obstacle,
							"finish that with Git, then make the save point again");
				}
				FolderView view = new FolderView(root, Layout::isPart);
				Commit commit = git.commit(view.files(), Layout::isPart, history.message(opening, person, note), person.name(),
						person.email(), clock.instant());
				return commit == null ? Optional.empty() : Optional.of(history.find(commit.id()));
			}
		} catch (IOException e) {
			throw DiskFaults.explain("the files are saved, but no save point was made", root, e);
		}
	}
}
