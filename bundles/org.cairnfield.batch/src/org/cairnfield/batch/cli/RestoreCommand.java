package org.cairnfield.batch.cli;

import java.util.Optional;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "restore", description = "${bundle:RestoreCommand_what}")
final class RestoreCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "SAVEPOINT", descriptionKey = "RestoreCommand_savepoint2")
	String name;

	@Option(names = "--only-its-change", descriptionKey = "RestoreCommand_onlyItsChange")
	boolean onlyItsChange;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	OnDamage onDamage() {
		return onlyItsChange ? OnDamage.REFUSE : OnDamage.MEND;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		SavePoint wanted;
		try (History history = archive.history()) {
			wanted = history.find(name);
		}
		Optional<SavePoint> made = onlyItsChange
				? Optional.of(archive.undo(wanted, archiveArgs.person(), archiveArgs.note))
				: archive.restore(wanted, archiveArgs.person(), archiveArgs.note);
		meet(archive.damages());
		if (json) {
			printJson(new Json().put("savePoint", made.map(p -> (Object) json(p).fields()).orElse(null)));
		} else {
			out().println(made.map(p -> Words.bind(Messages.RestoreCommand_savePoint, p.shortId(), p.summary()))
					.orElse(Messages.RestoreCommand_nothingToRestoreTheArchive));
		}
	}
}
