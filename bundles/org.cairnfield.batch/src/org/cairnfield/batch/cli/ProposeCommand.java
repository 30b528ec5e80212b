package org.cairnfield.batch.cli;

import java.nio.file.Path;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.propose.QueueOrder;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.report.files.Tables;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.Intake;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "propose", description = { "${bundle:ProposeCommand_what}",
		"${bundle:ProposeCommand_more}" })
final class ProposeCommand extends SurveyCommand {

	@Mixin
	SourceArgs sourceArgs;

	@Option(names = "--split", paramLabel = "NAME", descriptionKey = "ProposeCommand_split")
	String splitName;

	@Mixin
	SplitArgs splitArgs;

	@Option(names = "--proposals", paramLabel = "OUT.csv", descriptionKey = "ProposeCommand_proposals")
	Path proposalsFile;

	@Override
	void run(Workers workers) throws Exception {
		SplitRequest request = splitArgs.request();
		ProposalRule rule = splitArgs.rule();
		if (sourceArgs.isArchive()) {
			ArchiveWork.run(this, sourceArgs.source.archive, Mode.EDIT, OnDamage.REFUSE,
					archive -> propose(archive, rule, workers));
			return;
		}
		Intake intake = read(sourceArgs.source.map, sourceArgs.reading, workers);
		notes(intake, false);
		FileRun run = FileRun.proposed(FileArchive.of(intake), request, rule, workers);
		if (proposalsFile != null) {
			Tables.proposals(proposalsFile, run);
		}
		if (json) {
			printJson(
					new Json().put("samples", intake.map().size()).put("accessPoints", intake.map().accessPointCount())
							.put("notHeard", intake.notHeard()).put("split", Results.split(run, workers))
							.put("proposals", Results.proposals(run)));
		} else {
			Results.printSplit(run, workers, out());
			Results.printProposals(run, out());
		}
	}

	private void propose(OpenArchive archive, ProposalRule rule, Workers workers) throws Exception {
		org.cairnfield.model.Split split = ArchiveWork.split(archive.archive(), splitName);
		SplitProposals made = SplitProposals.of(SplitOnMap.of(archive.archive(), split), rule, workers);
		SetProposalsCommand command = new SetProposalsCommand(split, made);
		if (command.canExecute()) {
			command.execute();
		}
		EvidenceTable evidence = EvidenceTable.of(SplitOnMap.of(archive.archive(), split), workers);
		if (proposalsFile != null) {
			Tables.evidence(proposalsFile, QueueOrder.MARKED_FIRST.sorted(evidence.all()));
		}
		String told = ArchiveWork.record(archive, sourceArgs.person, sourceArgs.note);
		if (json) {
			printJson(Results.proposals(split.getId(), made, evidence));
		} else {
			Results.printProposals(split.getId(), made, evidence, out());
			out().println(told);
		}
	}
}
