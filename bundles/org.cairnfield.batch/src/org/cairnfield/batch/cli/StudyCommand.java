package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
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
		"${bundle:StudyCommand_what}",
		"${bundle:StudyCommand_more}" })
final class StudyCommand extends SurveyCommand {

	private static final String ROWS = "rows";

	final StudySources sources = new StudySources();

	@Option(names = "--map", arity = "1..*", paramLabel = "FILE", parameterConsumer = StudySources.Maps.class, descriptionKey = "StudyCommand_map")
	List<String> maps;

	@Option(names = "--test", arity = "1..*", paramLabel = "FILE", parameterConsumer = StudySources.Tests.class, descriptionKey = "StudyCommand_test")
	List<String> tests;

	@Option(names = "--archive", paramLabel = "DIR", parameterConsumer = StudySources.Archives.class, descriptionKey = "StudyCommand_archive")
	List<String> archives;

	@Option(names = "--name", paramLabel = "NAME", parameterConsumer = StudySources.Names.class, descriptionKey = "StudyCommand_name")
	List<String> names;

	@Option(names = "--out", required = true, paramLabel = "DIR", descriptionKey = "StudyCommand_out")
	Path out;

	@Option(names = "--method", arity = "1..*", paramLabel = "METHOD", descriptionKey = "StudyCommand_method")
	List<String> methods = List.of();

	@Option(names = "--time", paramLabel = "S", descriptionKey = "StudyCommand_time")
	Double seconds;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "1", descriptionKey = "StudyCommand_seed")
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
			out().println(Words.bind(Messages.StudyCommand_writtenToStudyHtmlStudy, out));
		}
	}

	private StudySettings settings() {
		if (seconds != null && !(seconds > 0 && seconds <= TimeLimit.NEVER.toSeconds())) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.StudyCommand_timeMustBeANumber, seconds));
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
			note(Words.bind(Messages.StudyCommand_hasNoTestSurveyIt, source.name()));
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
			note(Words.bind(Messages.StudyCommand_hasNoTestSurveyIt, source.name()));
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
					note(Words.bind(Messages.StudyCommand_skipped, row.map(), row.method(), row.skipped()));
				}
			}
		};
	}
}
