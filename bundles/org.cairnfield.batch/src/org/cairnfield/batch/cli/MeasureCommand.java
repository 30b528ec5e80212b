package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import org.cairnfield.curation.run.SurveyRun;
import org.cairnfield.exchange.Intake;
import picocli.CommandLine.Command;

@Command(name = "measure", description = "Position errors and cost of plain matching, of the split and of the automatic choice.")
final class MeasureCommand extends MeasuringCommand {

	@Override
	void prepare() {
		// nothing is written
	}

	@Override
	List<Path> write(SurveyRun run, Intake intake, Json result) {
		return List.of(); // the figures are all there is to it
	}
}
