package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.timeline.Ageing;
import org.cairnfield.curation.timeline.AgeingRow;
import picocli.CommandLine.Command;

@Command(name = "ageing", description = "Measure each release, and the archive as it is, on every survey that is later than all of its own at that site.")
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
			requireSound("release " + version, then.damages());
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
				row -> out().println(String.format(Locale.ROOT, "%-10s %s of %s, on %s of %s: %.2f m (%.2f to %.2f)",
						row.map().isEmpty() ? "as it is" : row.map(), row.site(), row.newest(), row.survey(),
						row.date(), row.error().metres(),
						row.error().interval().low(), row.error().interval().high())));
		if (rows.isEmpty()) {
			out().println("no survey is later than those of the maps");
		}
	}
}
