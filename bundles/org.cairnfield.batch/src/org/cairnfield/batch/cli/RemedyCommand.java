package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.ArchiveCheck;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.Remedy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "remedy", description = "Applies what the named rules offer, as one save point that \"restore\" can take back.")
final class RemedyCommand extends ArchiveCommand {

	@Mixin
	RuleArgs ruleArgs;

	@Option(names = "--dry-run", description = "Only say what would be done.")
	boolean dryRun;

	@Override
	Mode mode() {
		return dryRun ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (ruleArgs.ids.isEmpty()) {
			throw new ParameterException(spec.commandLine(), "name the rules whose remedies are meant, with --rule");
		}
		ruleArgs.rules(spec);
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ArchiveCheck check = ArchiveCheck.of(archive.archive(), new RuleRun(ruleArgs.rules(spec)), RunResult.NONE, workers);
		reportBroken(check);
		RemedyCommands commands = new RemedyCommands(archive.archive());
		List<Map<String, Object>> done = new ArrayList<>();
		for (Finding finding : check.open()) {
			if (finding.remedy().isPresent()) {
				Remedy remedy = finding.remedy().get();
				if (!commands.changes(remedy)) { // an earlier remedy has done it
					continue;
				}
				if (!dryRun) {
					commands.apply(remedy);
				}
				done.add(new Json().put("rule", finding.rule()).put("finding", finding.message()).put("remedy", remedy.preview()).fields());
				if (!json) {
					out().println((dryRun ? "would " : "") + remedy.preview() + "  (" + finding.rule() + ")");
				}
			}
		}
		if (!dryRun) {
			record(archive);
		}
		if (json) {
			printJson(new Json().put("dryRun", dryRun).put("remedies", done));
		} else if (done.isEmpty()) {
			out().println("nothing to remedy");
		}
	}
}
