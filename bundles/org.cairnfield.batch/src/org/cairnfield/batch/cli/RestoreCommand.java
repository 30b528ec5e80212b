package org.cairnfield.batch.cli;

import java.util.Optional;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.task.Workers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "restore", description = "Go back to an earlier state by a new save point; nothing of the history is lost.")
final class RestoreCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "SAVEPOINT", description = "Its id, a beginning of it, or a tag.")
	String name;

	@Option(names = "--only-its-change", description = "Take back what that save point changed, and keep what came after.")
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
			out().println(made.map(p -> "save point " + p.shortId() + ": " + p.summary())
					.orElse("nothing to restore: the archive is in that state"));
		}
	}
}
