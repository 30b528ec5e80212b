package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.conflict.ConflictTable;
import org.cairnfield.curation.conflict.DecideConflictsCommand;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.conflict.DecidedLater;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "conflicts", description = {
		"${bundle:ConflictsCommand_what}",
		"${bundle:ConflictsCommand_more}" })
final class ConflictsCommand extends ArchiveCommand {

	@ArgGroup(exclusive = true)
	Action action = new Action();

	/** At most one of these. */
	static final class Action {

		@Option(names = "--export", paramLabel = "OUT.csv", descriptionKey = "ConflictsCommand_export")
		Path export;

		@Option(names = "--import", paramLabel = "IN.csv", descriptionKey = "ConflictsCommand_import")
		Path filled;
	}

	@Override
	Mode mode() {
		return action.filled == null ? Mode.READ : Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		if (action.export != null) {
			ConflictTable.write(action.export, archive.archive());
		} else if (action.filled != null) {
			DecideConflictsCommand decide = ConflictTable.read(action.filled, archive.archive());
			if (decide.canExecute()) {
				decide.execute();
			}
			record(archive);
		}
		List<Conflict> open = DecidedLater.open(archive.archive());
		if (json) {
			printJson(new Json().put("conflicts", open.stream().map(ConflictsCommand::json).toList()));
		} else {
			open.forEach(this::print);
			if (open.isEmpty()) {
				out().println(Messages.ConflictsCommand_nothingToDecide);
			}
		}
		if (!open.isEmpty()) {
			endWith(ExitCode.CONFLICTS);
		}
	}

	private static Object json(Conflict conflict) {
		return new Json().put("place", conflict.getPlace()).put("unit", conflict.getUnit())
				.put("before", conflict.getBase())
				.put("claims", conflict.getClaims().stream()
						.map(claim -> new Json().put("value", claim.getValue()).put("person", claim.getPerson())
								.put("time", claim.getTime() == null ? null : claim.getTime().toString()).fields())
						.toList())
				.fields();
	}

	private void print(Conflict conflict) {
		out().println(Words.bind(Messages.ConflictsCommand_before, conflict.getPlace(), conflict.getUnit(),
				shown(conflict.getBase())));
		for (Claim claim : conflict.getClaims()) {
			out().println(Words.bind(Messages.ConflictsCommand_by, shown(claim.getValue()), claim.getPerson(),
					claim.getTime() == null ? "" : ", " + claim.getTime()));
		}
	}

	private static String shown(String value) {
		return value == null ? "none" : value;
	}
}
