package org.cairnfield.batch.cli;

import java.nio.file.Path;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.Proposals;
import org.cairnfield.curation.run.Tables;
import org.cairnfield.curation.split.Split;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.Intake;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "propose", description = "Splits a map and finds for each noise sample the cluster it correlates with.")
final class ProposeCommand extends SurveyCommand {

	@Mixin
	IntakeArgs intakeArgs;

	@Mixin
	SplitArgs splitArgs;

	@Option(names = "--proposals", paramLabel = "OUT.csv",
			description = "Write sample,cluster,strength,margin,carrier,runnerUp: a line a noise sample, cluster empty where unplaced.")
	Path proposalsFile;

	@Override
	void run(Workers workers) throws Exception {
		SplitRequest request = splitArgs.request();
		ProposalRule rule = splitArgs.rule();
		Intake intake = read(intakeArgs.map, intakeArgs.reading, workers);
		notes(intake, false);
		Split split = Split.of(intake.map(), request, workers);
		Proposals proposals = Proposals.of(split, rule, workers);
		if (proposalsFile != null) {
			Tables.proposals(proposalsFile, proposals, intake.sampleIds()::get);
		}
		if (json) {
			out().println(new Json().put("samples", intake.map().size()).put("accessPoints", intake.map().accessPointCount())
					.put("notHeard", intake.notHeard()).put("split", Results.split(split))
					.put("proposals", Results.proposals(proposals)));
		} else {
			Results.printSplit(split, out());
			Results.printProposals(proposals, out());
		}
	}
}
