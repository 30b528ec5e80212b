package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.effect.HoldOuts;
import org.cairnfield.curation.effect.RemedyEffect;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "remedy", description = "Applies what the named rules offer, as one save point that \"restore\" can take back.")
final class RemedyCommand extends ArchiveCommand {

	@Mixin
	RuleArgs ruleArgs;

	@Option(names = "--dry-run", description = "Only say what would be done, and what it does to error and right floor on held-out training samples.")
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
		RuleCheck check = RuleCheck.of(archive.archive(), new RuleRun(ruleArgs.rules(spec)), workers);
		reportBroken(check);
		RemedyCommands commands = new RemedyCommands(archive.archive());
		List<Finding> offering = check.open().stream().filter(finding -> finding.remedy().isPresent()).toList();
		if (dryRun) {
			offering = offering.stream().filter(finding -> commands.changes(finding.remedy().get())).toList();
			say(offering, HoldOuts.of(check.map().surveyed(), check.findings(), workers), workers);
		} else {
			apply(offering, commands);
			record(archive);
		}
	}

	private void apply(List<Finding> offering, RemedyCommands commands) {
		List<Map<String, Object>> done = new ArrayList<>();
		for (Finding finding : offering) {
			Remedy remedy = finding.remedy().get();
			if (commands.changes(remedy)) { // an earlier remedy may have done it
				commands.apply(remedy);
				done.add(json(finding).fields());
				sayOne(remedy.preview(), finding);
			}
		}
		if (json) {
			printJson(new Json().put("dryRun", false).put("remedies", done));
		} else if (done.isEmpty()) {
			out().println("nothing to remedy");
		}
	}

	private void sayOne(String what, Finding finding) {
		if (!json) {
			out().println(what + "  (" + finding.rule() + ")");
		}
	}

	/** Each remedy alone, those of each rule together, and all of them. */
	private void say(List<Finding> offering, HoldOuts holdOuts, Workers workers) {
		offering.forEach(finding -> sayOne("would " + finding.remedy().get().preview(), finding));
		if (offering.isEmpty() && !json) {
			out().println("nothing to remedy");
		}
		Map<String, List<Finding>> byRule = new LinkedHashMap<>();
		offering.forEach(finding -> byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>()).add(finding));
		Json effects = new Json();
		byRule.forEach((rule, findings) -> {
			RemedyEffect effect = effect(findings, holdOuts, workers);
			effects.put(rule, json(effect));
			if (!json) {
				out().println(rule + ": " + effect.words());
			}
		});
		if (json) {
			printJson(new Json().put("dryRun", true)
					.put("remedies", offering.stream()
							.map(finding -> json(finding).put("effect", json(effect(List.of(finding), holdOuts, workers))).fields()).toList())
					.put("effects", effects).put("effect", offering.isEmpty() ? null : json(effect(offering, holdOuts, workers))));
		} else if (byRule.size() > 1) {
			out().println("all together: " + effect(offering, holdOuts, workers).words());
		}
	}

	private static RemedyEffect effect(List<Finding> findings, HoldOuts holdOuts, Workers workers) {
		return holdOuts.effect(findings.stream().map(finding -> finding.remedy().get()).toList(), workers);
	}

	private static Json json(Finding finding) {
		return new Json().put("rule", finding.rule()).put("key", finding.contentKey()).put("finding", finding.message())
				.put("remedy", finding.remedy().get().preview());
	}

	private static Json json(RemedyEffect effect) {
		return new Json().put("errorBeforeM", effect.onHoldOuts().errorBeforeMetres()).put("errorAfterM", effect.onHoldOuts().errorAfterMetres())
				.put("rightFloorBefore", effect.onHoldOuts().rightFloorBefore()).put("rightFloorAfter", effect.onHoldOuts().rightFloorAfter())
				.put("low", effect.onHoldOuts().errorChange().low()).put("high", effect.onHoldOuts().errorChange().high())
				.put("floorLow", effect.onHoldOuts().floorChange().low()).put("floorHigh", effect.onHoldOuts().floorChange().high())
				.put("samples", effect.samples()).put("accessPoints", effect.accessPoints()).put("heldOut", effect.onHoldOuts().questions());
	}
}
