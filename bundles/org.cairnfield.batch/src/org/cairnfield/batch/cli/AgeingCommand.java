package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.timeline.Ageing;
import org.cairnfield.curation.timeline.AgeingRow;
import picocli.CommandLine.Command;

@Command(name = "ageing", description = "${bundle:AgeingCommand_what}")
final class AgeingCommand extends ArchiveCommand {

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		List<AgeingRow> rows = new ArrayList<>();
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		for (ReleasedState release : book.list()) {
			String version = release.version().toString();
			PastState then = book.openReadOnly(version);
			requireSound(Words.bind(Messages.AgeingCommand_release, version), then.damages());
			rows.addAll(Ageing.of(version, then.archive(), archive.archive(), workers));
		}
		rows.addAll(Ageing.of("", archive.archive(), archive.archive(), workers));
		if (json) {
			printJson(new Json().put("ageing", rows.stream()
					.map(row -> new Json().put("release", row.map().isEmpty() ? null : row.map())
							.put("site", row.site())
							.put("newest", row.newest().toString()).put("survey", row.survey())
							.put("date", row.date().toString())
							.put("errorM", row.error().isKnown() ? row.error().metres() : null)
							.put("errorLowM", row.error().isKnown() ? row.error().interval().low() : null)
							.put("errorHighM", row.error().isKnown() ? row.error().interval().high() : null).fields())
					.toList()));
			return;
		}
		rows.forEach(
				row -> out().println(String.format(Locale.ROOT, Messages.AgeingCommand_ofOnOfMTo,
						row.map().isEmpty() ? Messages.AgeingCommand_asItIs : row.map(), row.site(), row.newest(),
						row.survey(),
						row.date(), row.error().metres(),
						row.error().interval().low(), row.error().interval().high())));
		if (rows.isEmpty()) {
			out().println(Messages.AgeingCommand_noSurveyIsLaterThan);
		}
	}
}
