package org.cairnfield.batch.cli;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.history.SavePoints;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "history", description = "${bundle:HistoryCommand_what}")
final class HistoryCommand extends ArchiveCommand {

	@Option(names = "--most", paramLabel = "N", defaultValue = "20", descriptionKey = "HistoryCommand_most")
	int most;

	@Override
	void checkArguments() {
		if (most < 0) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.HistoryCommand_mostMustBeANumber, most));
		}
	}

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
			SavePoints found = history.savePoints(most).with(history.check().damagesOfIndex());
			meet(found.damages());
			if (json) {
				printJson(new Json().put("savePoints", found.points().stream().map(p -> json(p).fields()).toList()));
			} else {
				print(found);
			}
		}
	}

	private void print(SavePoints found) {
		for (SavePoint point : found.points()) {
			out().println(point.shortId() + "  " + point.time() + "  " + point.person() + "  " + point.summary());
		}
		if (found.points().isEmpty() && found.damages().isEmpty()) {
			out().println(Messages.HistoryCommand_noSavePointYet);
		}
	}
}
