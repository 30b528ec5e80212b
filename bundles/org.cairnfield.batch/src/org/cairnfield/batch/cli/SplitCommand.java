package org.cairnfield.batch.cli;

import java.nio.file.Path;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.Tables;
import org.cairnfield.curation.split.Split;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.Intake;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "split", description = "Splits a map by DBSCAN. Every accepted sample takes part; nothing is cleaned away.")
final class SplitCommand extends SurveyCommand {

	@Mixin
	IntakeArgs intakeArgs;

	@Mixin
	SplitArgs splitArgs;

	@Option(names = "--labels", paramLabel = "OUT.csv", description = "Write sample,cluster,role: a line a sample, cluster -1 for noise.")
	Path labels;

	@Override
	void run(Workers workers) throws Exception {
		SplitRequest request = splitArgs.request();
		splitArgs.rule(); // of no use here, but checked
		Intake intake = read(intakeArgs.map, intakeArgs.reading, workers);
		notes(intake, false);
		Split split = Split.of(intake.map(), request, workers);
		if (labels != null) {
			Tables.labels(labels, split, intake.sampleIds()::get);
		}
		if (json) {
			out().println(new Json().put("samples", intake.map().size()).put("accessPoints", intake.map().accessPointCount())
					.put("notHeard", intake.notHeard()).put("split", Results.split(split)));
		} else {
			Results.printSplit(split, out());
		}
	}
}
