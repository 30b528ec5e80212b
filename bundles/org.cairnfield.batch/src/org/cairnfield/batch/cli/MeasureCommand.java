package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.measure.SplitMeasurement;
import org.cairnfield.curation.run.SurveyRun;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.Intake;
import org.cairnfield.model.Split;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "measure", description = { "Position errors and cost of plain matching, of the split and of the automatic choice.",
		"With --archive: of a split that it keeps, without and with approved samples, on its test surveys. Changes nothing." })
final class MeasureCommand extends MeasuringCommand {

	@Mixin
	SourceArgs sourceArgs;

	@Option(names = "--split", paramLabel = "NAME", description = "With --archive: which split; needed where there are several.")
	String splitName;

	@Mixin
	PolicyArgs policyArgs;

	@Mixin
	DamageArgs damageArgs;

	@Override
	boolean measuresArchive(SplitRequest request, Workers workers) throws Exception {
		if (sourceArgs.isArchive()) {
			ArchiveWork.run(this, sourceArgs.source.archive, Mode.READ, damageArgs.on(Mode.READ),
					archive -> measure(archive, request.seed(), workers));
		}
		return sourceArgs.isArchive();
	}

	private void measure(OpenArchive archive, long seed, Workers workers) throws Exception {
		Split split = ArchiveWork.split(archive.archive(), splitName);
		Standings standings = Standings.of(archive.archive(), split, policyArgs.policy());
		Outcome outcome = Outcome.of(SplitOnMap.of(archive.archive(), split), standings);
		SplitMeasurement measured = SplitMeasurement.of(outcome, SplitOnMap.testMap(archive.archive(), split), seed, workers);
		if (json) {
			printJson(KeptResults.measurement(split.getId(), measured, outcome));
		} else {
			KeptResults.printMeasurement(split.getId(), measured, outcome, out());
		}
	}

	@Override
	List<Path> files() {
		return sourceArgs.source.map;
	}

	@Override
	IntakeArgs.Reading reading() {
		return sourceArgs.reading;
	}

	@Override
	void prepare() {
		// nothing is written
	}

	@Override
	List<Path> write(SurveyRun run, Intake intake, Json result) {
		return List.of(); // the figures are all there is to it
	}
}
