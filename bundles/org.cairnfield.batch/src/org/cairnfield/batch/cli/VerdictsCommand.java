package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.CarryOver;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.decide.VerdictIntake;
import org.cairnfield.curation.decide.VerdictTable;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "verdicts", description = {
		"${bundle:VerdictsCommand_what}",
		"${bundle:VerdictsCommand_more}",
		"${bundle:VerdictsCommand_more2}" })
final class VerdictsCommand extends ArchiveCommand {

	@Option(names = "--split", paramLabel = "NAME", descriptionKey = "VerdictsCommand_split")
	String splitName;

	@ArgGroup(exclusive = true)
	Action action = new Action();

	@Mixin
	PolicyArgs policyArgs;

	/** At most one of these. */
	static final class Action {

		@Option(names = "--export", paramLabel = "OUT.csv", descriptionKey = "VerdictsCommand_export")
		Path export;

		@Option(names = "--import", paramLabel = "IN.csv", descriptionKey = "VerdictsCommand_import")
		Path taken;

		@Option(names = "--carry-from", paramLabel = "NAME", descriptionKey = "VerdictsCommand_carryFrom")
		String from;
	}

	@Override
	Mode mode() {
		return action.taken == null && action.from == null ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		policyArgs.check();
	}

	@Override
	void run(OpenArchive open, Workers workers) throws Exception {
		Archive archive = open.archive();
		ReviewPolicy policy = policyArgs.policy(open);
		Split split = ArchiveWork.split(archive, splitName);
		Json result = new Json().put("split", split.getId());
		if (action.export != null) {
			VerdictTable.write(action.export, archive, split, policy,
					archiveArgs.person == null ? null : archiveArgs.person.name(),
					EvidenceTable.of(SplitOnMap.of(archive, split), workers));
		} else if (action.taken != null) {
			if (!takeIn(open, split, policy, result)) {
				return;
			}
		} else if (action.from != null) {
			carry(open, split, policy, result);
		}
		Standings standings = Standings.of(archive, split, policy);
		if (json) {
			printJson(Results.standings(standings, result));
		} else {
			Results.printStandings(standings, out());
		}
	}

	private boolean takeIn(OpenArchive open, Split split, ReviewPolicy policy, Json result) throws Exception {
		VerdictIntake intake = VerdictIntake.read(action.taken, open.archive(), split, policy,
				archiveArgs.person().name(),
				RecordedVerdicts.of(open.archive()), Clock.systemUTC());
		if (!intake.problems().isEmpty()) {
			intake.problems()
					.forEach(problem -> err().println(Words.bind(Messages.VerdictsCommand_cairnfield, problem)));
			err().println(Messages.VerdictsCommand_cairnfieldNothingWasTakenIn);
			endWith(ExitCode.INPUT);
			return false;
		}
		intake.apply();
		result.put("taken", intake.taken()).put("known", intake.known()).put("blank", intake.blank()).put("rejected",
				intake.rejected());
		if (!json) {
			out().printf(Locale.ROOT, Messages.VerdictsCommand_takenInVerdictsKnownAlready,
					intake.taken(),
					intake.known(), intake.blank());
		}
		if (!intake.note().isEmpty()) {
			err().println(Words.bind(Messages.VerdictsCommand_cairnfield, intake.note()));
		}
		record(open);
		return true;
	}

	private void carry(OpenArchive open, Split split, ReviewPolicy policy, Json result) throws Exception {
		CarryOver over = CarryOver.of(open.archive(), ArchiveWork.split(open.archive(), action.from), split, policy,
				archiveArgs.person().name(), RecordedVerdicts.of(open.archive()), Clock.systemUTC());
		over.apply();
		result.put("carried", over.carried().size()).put("left", over.left().stream().map(left -> new Json()
				.put("sample", left.sample().toString()).put("was", left.was().toString()).put("why", left.why())
				.fields()).toList());
		if (!json) {
			over.left().forEach(
					left -> out().println(
							Words.bind(Messages.VerdictsCommand_stays, left.sample(), left.was(), left.why())));
			out().printf(Locale.ROOT, Messages.VerdictsCommand_carriedVerdictsFromThoseOf,
					over.carried().size(),
					action.from, over.left().size());
		}
		record(open);
	}
}
