package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.KeptWaiver;
import org.cairnfield.curation.check.RuleSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "waivers", description = {
		"${bundle:WaiversCommand_what}",
		"${bundle:WaiversCommand_more}" })
final class WaiversCommand extends ArchiveCommand {

	@Option(names = "--withdraw", paramLabel = "ID", descriptionKey = "WaiversCommand_withdraw")
	List<String> withdraw = List.of();

	@Override
	Mode mode() {
		return withdraw.isEmpty() ? Mode.READ : Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		RuleCheck check = RuleCheck.of(archive.archive(), RuleSettings.of(archive.archive()).rules().run(), workers);
		reportBroken(check);
		List<KeptWaiver> all = KeptWaiver.of(archive.archive(), check.findings());
		List<KeptWaiver> listed = withdraw.isEmpty() ? all : named(all);
		if (!withdraw.isEmpty()) {
			archive.archive().getWaivers().removeAll(listed.stream().map(KeptWaiver::kept).toList());
			record(archive);
		}
		if (json) {
			printJson(new Json().put(withdraw.isEmpty() ? "waivers" : "withdrawn",
					listed.stream().map(w -> new Json().put("id", w.id())
							.put("rule", w.kept().getRule()).put("person", w.kept().getPerson())
							.put("time", w.kept().getTime().toString())
							.put("reason", w.kept().getReason()).put("covers", w.covered().size())
							.put("about", w.about()).fields()).toList()));
			return;
		}
		if (listed.isEmpty()) {
			out().println(Messages.WaiversCommand_nothingIsWaived);
		}
		for (KeptWaiver w : listed) {
			out().println(Words.bind(Messages.WaiversCommand_byAt,
					withdraw.isEmpty() ? "" : Messages.WaiversCommand_withdrawn, w.id(), w.kept().getRule(),
					w.kept().getPerson(), w.kept().getTime(), w.kept().getReason()));
			out().println(Words.bind(Messages.WaiversCommand_covers, w.about()));
		}
	}

	/** All that are named, before anything is changed. */
	private List<KeptWaiver> named(List<KeptWaiver> all) {
		List<KeptWaiver> found = new ArrayList<>();
		for (String id : withdraw) {
			found.add(all.stream().filter(w -> w.id().equals(id)).findFirst()
					.orElseThrow(() -> new ParameterException(spec.commandLine(),
							Words.bind(Messages.WaiversCommand_noWaiverOfThisArchive, id))));
		}
		return found.stream().distinct().toList();
	}
}
