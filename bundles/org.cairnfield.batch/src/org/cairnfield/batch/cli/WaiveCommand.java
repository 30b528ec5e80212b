package org.cairnfield.batch.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Waiver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "waive", description = "Waive findings that may stay as they are, and say why, as one save point that \"restore\" can take back.")
final class WaiveCommand extends ArchiveCommand {

	private static final int SHORTEST_KEY = 4;

	@Mixin
	AskedRuleArgs ruleArgs;

	@Option(names = "--finding", paramLabel = "KEY", description = "Only this finding: its key as \"check\" prints it, or the beginning of one; may be repeated. Without it, all open findings of the rules.")
	List<String> keys = List.of();

	@Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why they may stay; kept with the waiver.")
	String reason;

	@Option(names = "--dry-run", description = "Only say what would be waived.")
	boolean dryRun;

	@Override
	Mode mode() {
		return dryRun ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (ruleArgs.ids.isEmpty()) {
			throw wrong("name the rules whose findings are meant, with --rule");
		}
		if (reason.isBlank()) {
			throw wrong("--reason must say why the findings may stay; it is empty");
		}
		for (String key : keys) {
			if (!key.matches("[0-9a-f]{" + SHORTEST_KEY + ",16}")) {
				throw wrong("--finding must be a key that \"check\" prints, or its first digits, at least "
						+ SHORTEST_KEY + ", not '"
						+ key + "'");
			}
		}
		ruleArgs.check(spec);
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		RuleCheck check = RuleCheck.of(archive.archive(), ruleArgs.asked(archive, this).run(), workers);
		reportBroken(check);
		Map<String, Finding> wanted = wanted(check);
		List<Map<String, Object>> told = new ArrayList<>();
		Instant now = Instant.now();
		String person = archiveArgs.person().name();
		wanted.forEach((key, finding) -> {
			if (!dryRun) {
				archive.archive().getWaivers()
						.add(RuleCheck.toModel(Waiver.of(finding, reason.strip(), person, now)));
			}
			told.add(new Json().put("rule", finding.rule()).put("finding", finding.message()).put("key", key).fields());
			if (!json) {
				out().println((dryRun ? "would waive " : "waive ") + key + "  " + finding.message() + "  ("
						+ finding.rule() + ")");
			}
		});
		if (!dryRun) {
			record(archive);
		}
		if (json) {
			printJson(new Json().put("dryRun", dryRun).put("reason", reason.strip()).put("waived", told));
		} else if (told.isEmpty()) {
			out().println("nothing to waive");
		}
	}

	/** What is meant, by key; all keys are looked up before anything is changed. */
	private Map<String, Finding> wanted(RuleCheck check) {
		Map<String, Finding> open = byKey(check.open());
		if (keys.isEmpty()) {
			return open;
		}
		Map<String, Finding> waived = byKey(check.waived());
		Map<String, Finding> wanted = new LinkedHashMap<>();
		for (String key : keys) {
			List<String> full = open.keySet().stream().filter(k -> k.startsWith(key)).toList();
			if (full.size() > 1) {
				throw wrong("several findings have a key that begins with " + key + ": " + String.join(", ", full));
			}
			if (!full.isEmpty()) {
				wanted.put(full.get(0), open.get(full.get(0)));
			} else if (waived.keySet().stream().noneMatch(k -> k.startsWith(key))) {
				throw wrong("no finding of " + String.join(", ", ruleArgs.ids) + " has the key " + key
						+ "; \"check\" prints the keys, and they change with what a finding is about");
			} else {
				note(key + " is waived already");
			}
		}
		return wanted;
	}

	private static Map<String, Finding> byKey(List<Finding> findings) {
		Map<String, Finding> byKey = new LinkedHashMap<>();
		findings.forEach(finding -> byKey.putIfAbsent(finding.contentKey(), finding));
		return byKey;
	}

	private ParameterException wrong(String message) {
		return new ParameterException(spec.commandLine(), message);
	}
}
