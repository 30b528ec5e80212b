package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.team.Assigned;
import org.cairnfield.curation.team.Assigning;
import org.cairnfield.curation.team.Share;
import org.cairnfield.curation.team.WorkShares;
import org.cairnfield.model.Split;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "assign", description = { "${bundle:AssignCommand_what}",
		"${bundle:AssignCommand_more}" })
final class AssignCommand extends ArchiveCommand {

	@Option(names = "--split", paramLabel = "NAME", descriptionKey = "AssignCommand_split")
	String splitName;

	@Option(names = "--to", split = ",", paramLabel = "NAME", descriptionKey = "AssignCommand_to")
	List<String> to = List.of();

	@Option(names = "--by", paramLabel = "SHARE", descriptionKey = "AssignCommand_by")
	String by;

	@Option(names = "--equally", split = ",", paramLabel = "NAME", descriptionKey = "AssignCommand_equally")
	List<String> equally = List.of();

	private Share share;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (equally.isEmpty() == to.isEmpty() || to.isEmpty() != (by == null)) {
			throw new ParameterException(spec.commandLine(),
					Messages.AssignCommand_giveEitherToNameWith);
		}
		try {
			share = by == null ? null : Share.parse(by);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Split split = ArchiveWork.split(archive.archive(), splitName);
		ReviewPolicy policy = new PolicyArgs().policy(archive);
		List<Assigned> before = Assigned.of(archive.archive(), split.getId());
		Assigning assigning = new Assigning(archive.archive(), split, policy.bands(), archiveArgs.person().name(),
				Clock.systemUTC());
		(share == null ? assigning.equally(equally) : assigning.assign(to, share)).apply();
		WorkShares shares = WorkShares.of(archive.archive(), split, policy.bands());
		List<Assigned> made = shares.assignments().stream().filter(each -> !before.contains(each)).toList();
		List<String> overlaps = made.stream().map(Assigned::reviewer).distinct().map(shares::overlapText)
				.filter(text -> !text.isEmpty()).toList();
		record(archive);
		overlaps.forEach(this::note);
		if (json) {
			printJson(new Json().put("split", split.getId())
					.put("assigned", made.stream().map(each -> AssignmentsCommand.json(each, shares).fields()).toList())
					.put("unassigned", shares.unassigned()).put("overlaps", overlaps));
			return;
		}
		made.forEach(each -> out().println(
				Words.bind(Messages.AssignCommand_assignedToOfProposals, each.share(), each.reviewer(),
						shares.size(each.share()), shares.proposals())));
		out().println(Words.bind(Messages.AssignCommand_unassigned, shares.unassigned()));
	}
}
