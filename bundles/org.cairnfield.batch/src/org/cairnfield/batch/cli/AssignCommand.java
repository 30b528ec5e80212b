package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.team.Assigned;
import org.cairnfield.curation.team.Assigning;
import org.cairnfield.curation.team.Share;
import org.cairnfield.curation.team.WorkShares;
import org.cairnfield.model.Split;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "assign", description = { "Assign proposals of a split to reviewers, as one save point.",
		"Several may have the same proposals; it says how many. \"assignments\" lists who has what and takes assignments away." })
final class AssignCommand extends ArchiveCommand {

	@Option(names = "--split", paramLabel = "NAME", description = "Which split; needed where there are several.")
	String splitName;

	@Option(names = "--to", split = ",", paramLabel = "NAME", description = "Who is to review; several names with commas between them have the same proposals.")
	List<String> to = List.of();

	@Option(names = "--by", paramLabel = "SHARE", description = "With --to: which proposals, as \"band NAME\", \"site ID\", \"floor ID/LEVEL\" or \"part N/OF\".")
	String by;

	@Option(names = "--equally", split = ",", paramLabel = "NAME", description = "Parts of about the same size, one for each of these names. Each sample is in the same part on every computer.")
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
					"give either --to NAME with --by SHARE, or --equally NAME,NAME");
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
				"assigned     " + each.share() + " to " + each.reviewer() + ": " + shares.size(each.share()) + " of "
						+ shares.proposals() + " proposals"));
		out().println("unassigned   " + shares.unassigned());
	}
}
