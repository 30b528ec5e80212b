package org.cairnfield.batch.cli;

import java.nio.file.Files;
import java.time.Clock;
import org.cairnfield.curation.timeline.MapAge;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateSet;
import org.cairnfield.curation.release.ReleaseBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "gate", description = "${bundle:GateCommand_what}")
final class GateCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--init", descriptionKey = "GateCommand_init")
	boolean init;

	@Override
	Mode mode() {
		return init ? Mode.EDIT : Mode.READ;
	}

	@Override
	void checkArguments() {
		packArgs.request();
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		if (init) {
			if (Files.exists(archive.folder().resolve("releases").resolve(GateSet.FILE))) {
				throw new ParameterException(spec.commandLine(),
						Words.bind(Messages.GateCommand_theArchiveHasAFile, GateSet.FILE));
			}
			book.keep(GateSet.USUAL, archiveArgs.person());
			record(archive);
			return;
		}
		packArgs.choose(archive.archive());
		GateCheck check = book.ask(packArgs.request(), workers);
		reportBroken(check.check());
		if (json) {
			printJson(new Json().put("met", check.holding().isEmpty()).put("gates", GateTable.json(check.results()))
					.put("ages", check.ages().stream().map(MapAge::words).toList()));
		} else {
			GateTable.print(check.results(), out());
			out().println();
			out().println(check.holding().isEmpty() ? Messages.GateCommand_everyGateIsMet
					: Words.bind(Messages.GateCommand_ofGatesHoldARelease, check.holding().size(),
							check.results().size()));
		}
		endWith(check.holding().isEmpty() ? ExitCode.OK : ExitCode.GATES);
	}
}
