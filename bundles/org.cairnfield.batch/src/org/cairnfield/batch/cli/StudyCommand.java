package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.study.Study;
import org.cairnfield.curation.study.StudyFolderException;
import org.cairnfield.curation.study.StudyListener;
import org.cairnfield.curation.study.StudyMap;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.curation.study.StudyRecords;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudySettings;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.report.files.OutputFolder;
import org.cairnfield.report.files.StudyFiles;
import org.cairnfield.report.files.StudyJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "study", description = {
		"Set ways of splitting side by side, on many maps with one budget of comparisons: which way should these maps be split?",
		"All settings are chosen on held-out training positions; test surveys give the figures only. Each row is kept in DIR/rows as soon as it is done: "
				+ "the same command goes on where it was interrupted, and does again what its files, seed or archive have changed." })
final class StudyCommand extends SurveyCommand {

	private static final String ROWS = "rows";

	final StudySources sources = new StudySources();

	@Option(names = "--map", arity = "1..*", paramLabel = "FILE", parameterConsumer = StudySources.Maps.class, description = "Survey files of one map, as \"run\" takes them. May be repeated: each --map is another map.")
	List<String> maps;

	@Option(names = "--test", arity = "1..*", paramLabel = "FILE", parameterConsumer = StudySources.Tests.class, description = "Survey files to measure the --map right before it with; or as many --test as there are --map, in the same order. "
			+ "A map without one is measured on a fifth of its own positions, held out by blocks.")
	List<String> tests;

	@Option(names = "--archive", paramLabel = "DIR", parameterConsumer = StudySources.Archives.class, description = "Folder of an archive whose map and test surveys take part. May be repeated.")
	List<String> archives;

	@Option(names = "--name", paramLabel = "NAME", parameterConsumer = StudySources.Names.class, description = "What to call the --map or --archive before it; otherwise as its file or folder.")
	List<String> names;

	@Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder for study.html, study.csv, study.json and rows; made where there is none.")
	Path out;

	@Option(names = "--method", arity = "1..*", paramLabel = "METHOD", description = "Only these, and plain matching; otherwise all.")
	List<String> methods = List.of();

	@Option(names = "--time", paramLabel = "S", description = "Seconds that a method may take on a map, default 600; one that takes longer is skipped, and said to be.")
	Double seconds;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of all that is drawn; default ${DEFAULT-VALUE}.")
	long seed;

	@Mixin
	IntakeArgs.Reading reading;

	@Mixin
	DamageArgs damageArgs;

	@Override
	void run(Workers workers) throws Exception {
		StudySettings settings = settings();
		List<StudySources.Source> asked = sources.all(spec);
		OutputFolder.make(out);
		List<StudyMap> read = new ArrayList<>();
		for (StudySources.Source source : asked) {
			read.add(source.archive() == null ? files(source, workers) : archive(source));
		}
		StudyTable table;
		try {
			table = Study.run(read, settings, StudyRecords.in(OutputFolder.make(out.resolve(ROWS))), listener(workers),
					workers);
		} catch (StudyFolderException e) {
			throw (IntakeException) e.getCause();
		}
		StudyFiles.write(out, table);
		if (json) {
			printJson(Json.of(StudyJson.of(table)));
		} else {
			StudyResults.print(table, out());
			out().println("written to " + out + ": study.html, study.csv, study.json");
		}
	}

	private StudySettings settings() {
		if (seconds != null && !(seconds > 0 && seconds <= TimeLimit.NEVER.toSeconds())) {
			throw new ParameterException(spec.commandLine(),
					"--time must be a number of seconds above 0, was " + seconds);
		}
		try {
			return new StudySettings(
					methods.isEmpty() ? StudyMethod.all() : methods.stream().map(StudyMethod::of).toList(),
					seconds == null ? StudySettings.USUAL_TIME : Duration.ofMillis(Math.round(seconds * 1000)), seed);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}

	private StudyMap files(StudySources.Source source, Workers workers) throws Exception {
		Intake intake = read(source.map(), reading, workers);
		notes(intake, false);
		if (source.test().isEmpty()) {
			note(source.name()
					+ " has no test survey: it is measured on a fifth of its own positions, held out by blocks");
			return StudyMap.of(source.name(), FileArchive.heldOut(intake, seed), workers);
		}
		Intake tested = read(source.test(), reading, workers);
		notes(tested, false);
		MeasuringCommand.requireCommonAccessPoint(intake.map(), tested.map());
		return StudyMap.of(source.name(), FileArchive.of(intake, tested), workers);
	}

	private StudyMap archive(StudySources.Source source) throws Exception {
		List<StudyMap> made = new ArrayList<>();
		ArchiveWork.run(this, source.archive(), Mode.READ, damageArgs.on(Mode.READ),
				archive -> made.add(StudyMap.of(source.name(), archive.archive(), seed)));
		if (made.get(0).isHeldOut()) {
			note(source.name()
					+ " has no test survey: it is measured on a fifth of its own positions, held out by blocks");
		}
		return made.get(0);
	}

	private StudyListener listener(Workers workers) {
		return new StudyListener() {
			@Override
			public void begun(Step step) {
				workers.progress().begin(step.toString(), step.of());
				workers.progress().advance(step.done());
			}

			@Override
			public void done(StudyRow row, boolean kept) {
				if (!row.isMeasured()) {
					note(row.map() + ", " + row.method() + " skipped: " + row.skipped());
				}
			}
		};
	}
}
