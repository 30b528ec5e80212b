package org.cairnfield.batch.cli;

import java.nio.file.Files;
import java.time.Clock;
import org.cairnfield.curation.timeline.MapAge;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateSet;
import org.cairnfield.curation.release.ReleaseBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "gate", description = "Check the gates that a map must meet before it is released. The exit code says whether it does.")
final class GateCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--init", description = "Write the usual gates to releases/gates.txt of the archive, to be edited, and check nothing.")
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
						"the archive has a file releases/" + GateSet.FILE + " already: edit it");
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
			out().println(check.holding().isEmpty() ? "every gate is met"
					: check.holding().size() + " of " + check.results().size() + " gates hold a release back");
		}
		endWith(check.holding().isEmpty() ? ExitCode.OK : ExitCode.GATES);
	}
}
