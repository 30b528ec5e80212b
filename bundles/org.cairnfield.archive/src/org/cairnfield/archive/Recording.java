package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.ObjectChange;
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

	private static final String NOT_RECORDED = "the files are saved, but no save point was made";

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
				GitFolder.Obstacle obstacle = git.obstacle();
				if (obstacle != null) {
					throw new ArchiveException(NOT_RECORDED + ": " + obstacle.what(),
							obstacle.remedy() + ", then make the save point again");
				}
				ArchiveDiff diff = history.compareWithSaved(history.last());
				if (opening.isEmpty()) {
					requireLedgersToGrow(diff);
				}
				FolderView view = new FolderView(root, Layout::isPart);
				Commit commit = git.commit(view.files(), Layout::isPart, History.message(opening, diff, person, note), person.name(),
						person.email(), clock.instant());
				return commit == null ? Optional.empty() : Optional.of(history.find(commit.id()));
			}
		} catch (DamagedException e) {
			Damage first = e.damages().get(0);
			throw new DamagedException(NOT_RECORDED + ": the history is damaged: " + first.file() + ' ' + first.reason(), e.remedy(),
					e.damages(), e);
		} catch (IOException e) {
			throw DiskFaults.explain(NOT_RECORDED, root, e);
		}
	}

	/** A verdict that a save point holds is taken back by another verdict, not by taking it out. */
	private static void requireLedgersToGrow(ArchiveDiff diff) throws ArchiveException {
		for (ObjectChange change : diff.objects()) {
			if (change.what().equals("verdict") && change.way() != ObjectChange.Way.ADDED) {
				throw new ArchiveException("the files are saved, but no save point was made: verdict " + change.id()
						+ " of an earlier save point is gone or other than it was, and ledgers only grow",
						"put it back and give a verdict that supersedes it, or restore the last save point");
			}
		}
	}
}
