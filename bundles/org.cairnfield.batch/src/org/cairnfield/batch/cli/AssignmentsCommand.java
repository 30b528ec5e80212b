package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.team.Assigned;
import org.cairnfield.curation.team.Assigning;
import org.cairnfield.curation.team.ShareProgress;
import org.cairnfield.curation.team.WorkShares;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "assignments", description = {
		"${bundle:AssignmentsCommand_what}",
		"${bundle:AssignmentsCommand_more}" })
final class AssignmentsCommand extends ArchiveCommand {

	@Option(names = "--split", paramLabel = "NAME", descriptionKey = "AssignmentsCommand_split")
	String splitName;

	@Option(names = "--remove", paramLabel = "ID", descriptionKey = "AssignmentsCommand_remove")
	List<String> remove = List.of();

	@Override
	Mode mode() {
		return remove.isEmpty() ? Mode.READ : Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		if (!remove.isEmpty()) {
			List<String> known = Assigned.of(archive.archive()).stream().map(Assigned::id).toList();
			for (String id : remove) {
				if (!known.contains(id)) {
					throw new ParameterException(spec.commandLine(),
							Words.bind(Messages.AssignmentsCommand_noAssignmentHasTheId, id));
				}
			}
			Assigning.remove(archive.archive(), remove).apply();
			record(archive);
		}
		ReviewPolicy policy = new PolicyArgs().policy(archive);
		List<Map<String, Object>> told = new ArrayList<>();
		for (String id : splits(archive.archive())) {
			Optional<Split> split = archive.archive().getSplits().stream().filter(each -> each.getId().equals(id))
					.findFirst();
			if (split.isPresent()) {
				WorkShares shares = WorkShares.of(archive.archive(), split.get(), policy.bands());
				List<ShareProgress> progress = shares.progress(Standings.of(archive.archive(), split.get(), policy));
				told.add(json(shares, progress).fields());
				if (!json) {
					print(shares, progress);
				}
			} else {
				Assigned.of(archive.archive(), id)
						.forEach(each -> note(Words.bind(Messages.AssignmentsCommand_assignmentToIsOfSplit,
								each.id(), each.share(), each.reviewer(), id)));
			}
		}
		if (json) {
			printJson(new Json().put("splits", told));
		} else if (told.isEmpty()) {
			out().println(Messages.AssignmentsCommand_nothingIsAssigned);
		}
	}

	private Set<String> splits(Archive archive) throws Exception {
		if (splitName != null) {
			return Set.of(ArchiveWork.split(archive, splitName).getId());
		}
		Set<String> ids = new LinkedHashSet<>();
		Assigned.of(archive).forEach(each -> ids.add(each.split()));
		return ids;
	}

	static Json json(Assigned assigned, WorkShares shares) {
		return new Json().put("id", assigned.id()).put("reviewer", assigned.reviewer())
				.put("share", assigned.share().toString())
				.put("proposals", shares.size(assigned.share())).put("assignedBy", assigned.person())
				.put("time", String.valueOf(assigned.time()));
	}

	private static Json json(WorkShares shares, List<ShareProgress> progress) {
		return new Json().put("split", shares.split()).put("proposals", shares.proposals())
				.put("unassigned", shares.unassigned())
				.put("reviewers", progress.stream().map(each -> json(each, shares).fields()).toList());
	}

	private static Json json(ShareProgress progress, WorkShares shares) {
		Agreement agreement = progress.agreement();
		return new Json().put("reviewer", progress.reviewer())
				.put("shares", progress.shares().stream().map(each -> json(each, shares).fields()).toList())
				.put("proposals", progress.proposals()).put("given", progress.given())
				.put("byOthers", progress.byOthers()).put("toDo", progress.toDo())
				.put("secondReviewsDue", progress.secondsDue()).put("disputed", progress.disputed())
				.put("judgedByTwo", agreement.kappa().items())
				.put("agreed", agreement.kappa().observed()).put("kappa", agreement.kappa().value())
				.put("kappaDegenerate", agreement.isDegenerate());
	}

	private void print(WorkShares shares, List<ShareProgress> progress) {
		out().println(Words.bind(Messages.AssignmentsCommand_splitProposalsAssignedToNobody, shares.split(),
				shares.proposals(), shares.unassigned()));
		shares.assignments()
				.forEach(each -> out().println(
						Words.bind(Messages.AssignmentsCommand_toAssignedByAt, each.id(), each.share(),
								each.reviewer(), each.person(), each.time())));
		if (progress.isEmpty()) {
			return;
		}
		ConsoleTable table = new ConsoleTable("reviewer", "proposals", "given", Messages.AssignmentsCommand_byOthers,
				Messages.AssignmentsCommand_toDo, Messages.AssignmentsCommand_2ndDue,
				"disputed", "agreement");
		for (ShareProgress each : progress) {
			table.row(each.reviewer(), text(each.proposals()), text(each.given()), text(each.byOthers()),
					text(each.toDo()), text(each.secondsDue()),
					text(each.disputed()), agreement(each.agreement()));
		}
		table.print(out());
	}

	private static String text(int count) {
		return String.valueOf(count);
	}

	private static String agreement(Agreement agreement) {
		return agreement.kappa().items() == 0 ? "–"
				: String.format(Locale.ROOT, Messages.AssignmentsCommand_of, 100 * agreement.kappa().observed(),
						agreement.kappa().items())
						+ (agreement.isDegenerate() ? ""
								: String.format(Locale.ROOT, ", κ %.2f", agreement.kappa().value()).replace("-", "−"));
	}
}
