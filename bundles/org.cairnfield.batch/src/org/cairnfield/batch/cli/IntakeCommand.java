package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Guess;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.Mapping;
import org.cairnfield.exchange.Preview;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.WideTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "intake", description = "${bundle:IntakeCommand_what}")
final class IntakeCommand extends SurveyCommand {

	@Mixin
	IntakeArgs intakeArgs;

	@Option(names = "--preview", descriptionKey = "IntakeCommand_preview")
	boolean previewOnly;

	@Option(names = "--keep-mapping", paramLabel = "FILE", descriptionKey = "IntakeCommand_keepMapping")
	Path keepMapping;

	@Option(names = "--wide", paramLabel = "OUT.csv", descriptionKey = "IntakeCommand_wide")
	Path wide;

	@Mixin
	IntoArchive intoArchive;

	@Override
	void run(Workers workers) throws Exception {
		requireNames(intakeArgs.map);
		if (intakeArgs.reading.site == null) { // the archive is opened for it
			intakeArgs.reading.usualSite = intoArchive.onlySite();
		}
		List<Preview> previews = SurveyIntake.preview(intakeArgs.map, intakeArgs.reading.options());
		if (!json) {
			previews.forEach(p -> out().println(p.toText()));
		}
		if (keepMapping != null) {
			Mapping.write(previews.get(0).options(), keepMapping);
		}
		if (previewOnly) {
			if (json) {
				printJson(new Json().put("files", previews.stream().map(IntakeCommand::json).toList()));
			}
			return;
		}
		Intake intake = read(intakeArgs.map, intakeArgs.reading, workers);
		notes(intake, true);
		if (wide != null) {
			writeWide(intake);
		}
		IntoArchive.Kept kept = intoArchive.folder == null ? null : intoArchive.keep(intakeArgs.map, intake);
		if (kept != null) {
			ask(kept);
		}
		if (json) {
			Json told = json(intake, previews);
			if (kept != null) {
				told.put("archive", json(kept));
			}
			printJson(told);
		} else {
			print(intake);
			if (kept != null) {
				print(kept);
			}
		}
	}

	private void writeWide(Intake intake) throws IntakeException {
		try {
			WideTable.write(wide, intake.map(), intake.sampleIds());
		} catch (IllegalArgumentException e) {
			throw new IntakeException(wide, 0, e.getMessage(),
					Messages.IntakeCommand_giveWhatHasThisName);
		}
	}

	private static Json json(IntoArchive.Kept kept) {
		return new Json()
				.put("surveys", kept.surveys().stream().map(t -> new Json().put("file", t.file().toString())
						.put("survey", t.surveyId()).put("site", t.site()).put("samples", t.samples()).fields())
						.toList())
				.put("takenBefore", kept.known().stream().map(k -> new Json().put("file", k.file().toString())
						.put("survey", k.surveyId()).fields()).toList())
				.put("savePoint", kept.savePoint().map(p -> p.id()).orElse(null))
				.put("sameNames", kept.asked().areFound() ? new Json().put("question", kept.asked().question())
						.put("names", kept.asked().names()).put("answer", kept.answer().toString()) : null);
	}

	/** The question that only a person can answer, with what was assumed. */
	private void ask(IntoArchive.Kept kept) {
		if (kept.asked().areFound() && intoArchive.sameNames == null) {
			err().println(Words.bind(Messages.IntakeCommand_questionTakenAsSameNames, kept.asked().question(),
					kept.answer(), kept.asked().kept().isPresent() ? Messages.IntakeCommand_asTheArchiveHasIt : ""));
		}
	}

	private void print(IntoArchive.Kept kept) {
		kept.surveys().forEach(
				t -> out().println(
						Words.bind(Messages.IntakeCommand_takenInSamplesAt, t.surveyId(), t.samples(), t.site())));
		kept.known().forEach(k -> out().println(
				Words.bind(Messages.IntakeCommand_notAgainItsContentIs, k.file().getFileName(), k.surveyId())));
		kept.savePoint().ifPresent(
				p -> out().println(Words.bind(Messages.IntakeCommand_savePoint, p.shortId(), p.summary())));
	}

	private static Map<String, Object> json(Preview preview) {
		Json guesses = new Json();
		for (Guess g : preview.guesses()) {
			guesses.put(g.what(), new Json().put("value", g.value()).put("evidence", g.evidence()));
		}
		return new Json().put("file", preview.file().toString())
				.put("layout", preview.layout() == null ? null : preview.layout().toString())
				.put("part", preview.part()).put("guesses", guesses).fields();
	}

	private static Json json(Intake intake, List<Preview> previews) {
		List<Map<String, Object>> files = intake.reports().stream()
				.map(r -> new Json().put("file", r.file().toString()).put("layout", r.layout().toString())
						.put("part", r.part())
						.put("rows", r.rowsRead()).put("accepted", r.accepted()).put("quarantined", r.quarantined())
						.put("notHeard", r.notHeard()).fields())
				.toList();
		return new Json().put("samples", intake.map().size()).put("accessPoints", intake.map().accessPointCount())
				.put("readings", intake.map().readingCount()).put("notHeard", intake.notHeard())
				.put("quarantined", intake.quarantined()).put("sites", intake.map().sites()).put("files", files)
				.put("understood", previews.stream().map(IntakeCommand::json).toList());
	}

	private void print(Intake intake) {
		ConsoleTable table = new ConsoleTable("file", "layout", "part", "rows", "accepted", "quarantined",
				Messages.IntakeCommand_notHeard);
		for (FileReport r : intake.reports()) {
			table.row(r.file().getFileName().toString(), r.layout().toString(), r.part(), Long.toString(r.rowsRead()),
					Long.toString(r.accepted()), Long.toString(r.quarantined()), r.notHeard());
		}
		table.print(out());
		out().println();
		out().println(Words.bind(Messages.IntakeCommand_samplesAccessPointsReadingsSites, intake.map().size(),
				intake.map().accessPointCount(), intake.map().readingCount(), String.join(", ", intake.map().sites())));
	}
}
