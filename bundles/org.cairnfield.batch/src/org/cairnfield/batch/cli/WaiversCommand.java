package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.KeptWaiver;
import org.cairnfield.curation.check.RuleSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "waivers", description = {
		"List the findings that somebody has waived: by whom, when, why, and what each waiver covers now.",
		"With --withdraw: takes waivers back, as one save point, so that the findings are reported again." })
final class WaiversCommand extends ArchiveCommand {

	@Option(names = "--withdraw", paramLabel = "ID", description = "Take that waiver back; may be repeated.")
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
			out().println("nothing is waived");
		}
		for (KeptWaiver w : listed) {
			out().println((withdraw.isEmpty() ? "" : "withdrawn ") + w.id() + "  " + w.kept().getRule() + ", by "
					+ w.kept().getPerson() + " at "
					+ w.kept().getTime() + ": " + w.kept().getReason());
			out().println("          covers " + w.about());
		}
	}

	/** All that are named, before anything is changed. */
	private List<KeptWaiver> named(List<KeptWaiver> all) {
		List<KeptWaiver> found = new ArrayList<>();
		for (String id : withdraw) {
			found.add(all.stream().filter(w -> w.id().equals(id)).findFirst()
					.orElseThrow(() -> new ParameterException(spec.commandLine(),
							"no waiver of this archive has the id '" + id + "'; \"waivers\" lists them")));
		}
		return found.stream().distinct().toList();
	}
}
