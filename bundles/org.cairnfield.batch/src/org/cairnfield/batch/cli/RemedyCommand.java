package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.RulesAsTold;
import org.cairnfield.curation.effect.HoldOuts;
import org.cairnfield.curation.effect.RemedyEffect;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Rule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "remedy", description = "${bundle:RemedyCommand_what}")
final class RemedyCommand extends ArchiveCommand {

	@Mixin
	AskedRuleArgs ruleArgs;

	@Option(names = "--alternative", paramLabel = "NAME", descriptionKey = "RemedyCommand_alternative2")
	String alternative;

	@Option(names = "--dry-run", descriptionKey = "RemedyCommand_dryRun")
	boolean dryRun;

	@Override
	Mode mode() {
		return dryRun ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (ruleArgs.ids.isEmpty()) {
			throw new ParameterException(spec.commandLine(), Messages.RemedyCommand_nameTheRulesWhoseRemedies);
		}
		ruleArgs.check(spec);
		checkAlternative(ruleArgs.rules(spec));
	}

	private void checkAlternative(List<Rule> rules) {
		Set<String> known = new LinkedHashSet<>();
		rules.forEach(rule -> rule.alternatives().forEach(way -> known.add(way.name())));
		if (alternative != null && !known.contains(alternative)) {
			String named = String.join(", ", rules.stream().map(Rule::id).toList());
			throw new ParameterException(spec.commandLine(), known.isEmpty()
					? Words.bind(Messages.RemedyCommand_thereIsOneRemedyOnly, named)
					: Words.bind(Messages.RemedyCommand_noAlternativeChooseFrom, named, alternative,
							String.join(", ", known)));
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		RulesAsTold told = ruleArgs.asked(archive, this);
		RuleCheck check = RuleCheck.of(archive.archive(), told.run(), workers);
		reportBroken(check);
		if (!json) {
			AskedRuleArgs.print(told, this);
		}
		RemedyCommands commands = new RemedyCommands(archive.archive());
		List<Finding> offering = check.open().stream().filter(finding -> finding.remedy().isPresent())
				.map(finding -> finding.choosing(alternative)).toList();
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
			out().println(Messages.RemedyCommand_nothingToRemedy);
		}
	}

	private void sayOne(String what, Finding finding) {
		if (!json) {
			out().println(what + "  (" + finding.rule() + ")");
		}
	}

	/** Each remedy alone, those of each rule together, and all of them. */
	private void say(List<Finding> offering, HoldOuts holdOuts, Workers workers) {
		offering.forEach(finding -> sayOne(
				Words.bind(Messages.RemedyCommand_would, finding.remedy().get().preview()), finding));
		if (offering.isEmpty() && !json) {
			out().println(Messages.RemedyCommand_nothingToRemedy);
		}
		Map<String, List<Finding>> byRule = new LinkedHashMap<>();
		offering.forEach(finding -> byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>()).add(finding));
		Json effects = new Json();
		byRule.forEach((rule, findings) -> {
			RemedyEffect effect = effect(findings, holdOuts, workers);
			effects.put(rule, json(effect));
			if (!json) {
				out().println(rule + ": " + effect.words());
				sayAlternatives(findings, holdOuts, workers);
			}
		});
		if (json) {
			printJson(new Json().put("dryRun", true)
					.put("remedies", offering.stream()
							.map(finding -> json(finding)
									.put("effect", json(effect(List.of(finding), holdOuts, workers)))
									.put("alternatives", alternatives(finding, holdOuts, workers)).fields())
							.toList())
					.put("effects", effects)
					.put("effect", offering.isEmpty() ? null : json(effect(offering, holdOuts, workers))));
		} else if (byRule.size() > 1) {
			out().println(
					Words.bind(Messages.RemedyCommand_allTogether, effect(offering, holdOuts, workers).words()));
		}
	}

	/** What each way to remedy these does, all measured on the same samples; nothing where there is one way only. */
	private void sayAlternatives(List<Finding> findings, HoldOuts holdOuts, Workers workers) {
		List<Alternative> ways = findings.stream().flatMap(finding -> finding.alternatives().stream()).distinct()
				.toList();
		List<RemedyEffect> effects = holdOuts.effects(ways.stream().map(way -> remedies(findings, way)).toList(),
				workers);
		for (int i = 0; i < ways.size(); i++) {
			out().println(Words.bind(Messages.RemedyCommand_alternative, ways.get(i).name(), ways.get(i).title(),
					effects.get(i).words()));
		}
	}

	private static List<Map<String, Object>> alternatives(Finding finding, HoldOuts holdOuts, Workers workers) {
		List<Alternative> ways = finding.alternatives();
		List<RemedyEffect> effects = holdOuts
				.effects(ways.stream().map(way -> remedies(List.of(finding), way)).toList(), workers);
		List<Map<String, Object>> all = new ArrayList<>();
		for (int i = 0; i < ways.size(); i++) {
			Remedy remedy = finding.choosing(ways.get(i).name()).remedy().get();
			all.add(new Json().put("name", ways.get(i).name()).put("title", ways.get(i).title())
					.put("remedy", remedy.preview())
					.put("effect", json(effects.get(i))).fields());
		}
		return all;
	}

	private static List<Remedy> remedies(List<Finding> findings, Alternative way) {
		return findings.stream().map(finding -> finding.choosing(way.name()).remedy().get()).toList();
	}

	private static RemedyEffect effect(List<Finding> findings, HoldOuts holdOuts, Workers workers) {
		return holdOuts.effect(findings.stream().map(finding -> finding.remedy().get()).toList(), workers);
	}

	private static Json json(Finding finding) {
		return new Json().put("rule", finding.rule()).put("key", finding.contentKey()).put("finding", finding.message())
				.put("remedy", finding.remedy().get().preview())
				.put("alternative", finding.alternatives().stream().map(Alternative::name).findFirst().orElse(null));
	}

	private static Json json(RemedyEffect effect) {
		return new Json().put("errorBeforeM", effect.onHoldOuts().errorBeforeMetres())
				.put("errorAfterM", effect.onHoldOuts().errorAfterMetres())
				.put("rightFloorBefore", effect.onHoldOuts().rightFloorBefore())
				.put("rightFloorAfter", effect.onHoldOuts().rightFloorAfter())
				.put("low", effect.onHoldOuts().errorChange().low())
				.put("high", effect.onHoldOuts().errorChange().high())
				.put("floorLow", effect.onHoldOuts().floorChange().low())
				.put("floorHigh", effect.onHoldOuts().floorChange().high())
				.put("samples", effect.samples()).put("accessPoints", effect.accessPoints())
				.put("readings", effect.readings()).put("heldOut", effect.onHoldOuts().questions());
	}
}
