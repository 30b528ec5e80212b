package org.cairnfield.batch.cli;

import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.task.Workers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "history", description = "Lists the save points of an archive, the last one first.")
final class HistoryCommand extends ArchiveCommand {

	@Option(names = "--most", paramLabel = "N", defaultValue = "20", description = "How many; default ${DEFAULT-VALUE}.")
	int most;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	/** Save points are no part of the files that are damaged, and one of them is the way back. */
	@Override
	OnDamage onDamage() {
		return OnDamage.GO_ON;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		try (History history = archive.history()) {
			List<SavePoint> points = history.list(most);
			if (json) {
				printJson(new Json().put("savePoints", points.stream().map(p -> json(p).fields()).toList()));
				return;
			}
			for (SavePoint point : points) {
				out().println(point.shortId() + "  " + point.time() + "  " + point.person() + "  " + point.summary());
			}
			if (points.isEmpty()) {
				out().println("no save point yet");
			}
		}
	}
}
