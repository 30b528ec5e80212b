package org.cairnfield.batch.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Waiver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "waive", description = "${bundle:WaiveCommand_what}")
final class WaiveCommand extends ArchiveCommand {

	private static final int SHORTEST_KEY = 4;

	@Mixin
	AskedRuleArgs ruleArgs;

	@Option(names = "--finding", paramLabel = "KEY", descriptionKey = "WaiveCommand_finding")
	List<String> keys = List.of();

	@Option(names = "--reason", required = true, paramLabel = "TEXT", descriptionKey = "WaiveCommand_reason")
	String reason;

	@Option(names = "--dry-run", descriptionKey = "WaiveCommand_dryRun")
	boolean dryRun;

	@Override
	Mode mode() {
		return dryRun ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (ruleArgs.ids.isEmpty()) {
			throw wrong(Messages.WaiveCommand_nameTheRulesWhoseFindings);
		}
		if (reason.isBlank()) {
			throw wrong(Messages.WaiveCommand_reasonMustSayWhyThe);
		}
		for (String key : keys) {
			if (!key.matches("[0-9a-f]{" + SHORTEST_KEY + ",16}")) {
				throw wrong(Words.bind(Messages.WaiveCommand_findingMustBeAKey, SHORTEST_KEY, key));
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
				out().println((dryRun ? Messages.WaiveCommand_wouldWaive : Messages.WaiveCommand_waive) + key + "  "
						+ finding.message() + "  ("
						+ finding.rule() + ")");
			}
		});
		if (!dryRun) {
			record(archive);
		}
		if (json) {
			printJson(new Json().put("dryRun", dryRun).put("reason", reason.strip()).put("waived", told));
		} else if (told.isEmpty()) {
			out().println(Messages.WaiveCommand_nothingToWaive);
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
				throw wrong(Words.bind(Messages.WaiveCommand_severalFindingsHaveAKey, key, String.join(", ", full)));
			}
			if (!full.isEmpty()) {
				wanted.put(full.get(0), open.get(full.get(0)));
			} else if (waived.keySet().stream().noneMatch(k -> k.startsWith(key))) {
				throw wrong(
						Words.bind(Messages.WaiveCommand_noFindingOfHasThe, String.join(", ", ruleArgs.ids), key));
			} else {
				note(Words.bind(Messages.WaiveCommand_isWaivedAlready, key));
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
