package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.time.Clock;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateSet;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.report.ReleaseReport;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.exchange.TextFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "report", description = "${bundle:ReportCommand_what}")
final class ReportCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--out", required = true, paramLabel = "FILE", descriptionKey = "ReportCommand_out")
	Path file;

	@Option(names = "--release", paramLabel = "VERSION", descriptionKey = "ReportCommand_release2")
	String version;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void checkArguments() {
		packArgs.request();
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		String page;
		if (version == null) {
			packArgs.choose(archive.archive());
			page = ReleaseReport.html(archive.archive(), null, book.ask(packArgs.request(), workers), archive.digest(),
					book.steps(null), damages());
		} else {
			packArgs.requireNoSplit(Messages.ReportCommand_aReleaseHasItsSplits);
			ReleasedState release = book.find(version);
			PastState then = book.openReadOnly(version);
			requireSound(Words.bind(Messages.ReportCommand_release, version), then.damages());
			GateCheck check = GateCheck.of(then.archive(), GateSet.parse(release.manifest().gateSet()), null,
					PackRequest.like(release.manifest().settings()), workers);
			page = ReleaseReport.html(then.archive(), release.manifest(), check, release.manifest().digest(),
					book.steps(release),
					damages());
		}
		TextFile.write(file, page);
		if (json) {
			printJson(new Json().put("file", file.toString()));
		} else {
			out().println(file);
		}
	}
}
