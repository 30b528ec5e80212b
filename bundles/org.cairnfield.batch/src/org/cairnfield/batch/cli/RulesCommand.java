package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.check.RulesAsTold;
import org.cairnfield.curation.check.SetRuleSettingsCommand;
import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "rules", description = {
		"${bundle:RulesCommand_what}",
		"${bundle:RulesCommand_more}" })
final class RulesCommand extends SurveyCommand {

	@Mixin
	RuleArgs ruleArgs;

	@Option(names = "--archive", paramLabel = "DIR", descriptionKey = "RulesCommand_archive")
	Path folder;

	@Option(names = "--set", paramLabel = "RULE.NUMBER=VALUE", descriptionKey = "RulesCommand_set")
	List<String> set = List.of();

	@Option(names = "--off", paramLabel = "RULE", descriptionKey = "RulesCommand_off")
	List<String> off = List.of();

	@Option(names = "--reset", paramLabel = "NAME", descriptionKey = "RulesCommand_reset")
	List<String> reset = List.of();

	@Option(names = "--reset-all", descriptionKey = "RulesCommand_resetAll")
	boolean resetAll;

	@Option(names = "--reason", paramLabel = "TEXT", descriptionKey = "RulesCommand_reason")
	String reason;

	@Option(names = "--person", converter = PersonArgument.class, paramLabel = "NAME", descriptionKey = "RulesCommand_person")
	Person person;

	@Option(names = "--note", paramLabel = "TEXT", descriptionKey = "RulesCommand_note")
	String note;

	@Mixin
	DamageArgs damageArgs;

	private boolean changes() {
		return !set.isEmpty() || !off.isEmpty() || !reset.isEmpty() || resetAll;
	}

	@Override
	void run(Workers workers) throws Exception {
		List<Rule> rules = ruleArgs.rules(spec);
		if (folder == null) {
			if (changes()) {
				throw wrong(Messages.RulesCommand_nameTheArchiveThatIs);
			}
			list(rules, new Json());
			return;
		}
		change(RuleSettings.USUAL, false);
		Mode mode = changes() ? Mode.EDIT : Mode.READ;
		ArchiveWork.run(this, folder, mode, damageArgs.on(mode), archive -> run(archive, rules));
	}

	private void run(OpenArchive archive, List<Rule> rules) throws Exception {
		if (changes()) {
			SetRuleSettingsCommand command = new SetRuleSettingsCommand(archive.archive(),
					change(RuleSettings.of(archive.archive()), true));
			if (command.canExecute()) {
				command.execute();
			}
			String told = ArchiveWork.record(archive, person, note);
			if (!json) {
				out().println(told);
			}
		}
		RulesAsTold told = RulesAsTold.of(rules, RuleSettings.of(archive.archive()), RuleSettings.USUAL, false);
		told.problems().forEach(this::note);
		Json settings = AskedRuleArgs.into(new Json(), told);
		if (!changes() || json) {
			list(rules, settings);
		}
		if (!json) {
			AskedRuleArgs.print(told, this);
			if (told.told().isEmpty()) {
				out().println(Messages.RulesCommand_everyRuleHasItsDefault);
			}
		}
	}

	/** @param known whether these are what the archive keeps, so that what is to be reset has to be there or known */
	private RuleSettings change(RuleSettings before, boolean known) {
		RuleSettings changed = resetAll ? RuleSettings.USUAL : before;
		try {
			for (String name : reset) {
				changed = known ? reset(changed, before, name) : changed;
			}
			for (String text : set) {
				RuleSettings now = changed;
				changed = AskedRuleArgs.read(spec, text,
						(rule, parameter, value) -> now.with(rule, parameter, value, reason));
			}
			for (String rule : off) {
				changed = changed.off(CleaningRules.registry().rule(rule), reason);
			}
		} catch (IllegalArgumentException e) {
			throw wrong(e.getMessage());
		}
		return changed;
	}

	/** What this version does not know can be reset too, where the archive has it. */
	private static RuleSettings reset(RuleSettings now, RuleSettings before, String name) {
		int point = name.indexOf('.');
		String rule = point < 0 ? name : name.substring(0, point);
		if (before.all().stream().noneMatch(one -> one.name().equals(name) || point < 0 && rule.equals(one.rule()))) {
			Rule one = CleaningRules.registry().rule(rule);
			if (point >= 0) {
				one.parameter(name.substring(point + 1));
			}
		}
		return point < 0 ? now.without(rule) : now.without(rule, name.substring(point + 1));
	}

	private ParameterException wrong(String message) {
		return new ParameterException(spec.commandLine(), message);
	}

	private void list(List<Rule> rules, Json settings) {
		if (json) {
			printJson(settings.put("rules", rules.stream().map(rule -> json(rule).fields()).toList()));
		} else {
			rules.forEach(rule -> print(rule, out()));
		}
	}

	private static void print(Rule rule, PrintWriter out) {
		out.println(rule.id() + ": " + rule.title() + " (" + severity(rule) + ")");
		out.println("  " + rule.explanation());
		for (Alternative way : rule.alternatives()) {
			out.println(Words.bind(Messages.RulesCommand_alternative, way.name(), way.title()));
		}
		List<Threshold> thresholds = rule.thresholds();
		for (int i = 0; i < thresholds.size(); i++) { // the numbers that can be set come first
			out.println("  " + thresholds.get(i).words()
					+ (i < rule.parameters().size() ? "  [" + range(rule, rule.parameters().get(i)) + "]" : ""));
		}
		out.println();
	}

	private static String range(Rule rule, Parameter parameter) {
		return Words.bind(Messages.RulesCommand_to, RuleSettings.name(rule.id(), parameter.id()),
				RuleWords.number(parameter.lowest()), RuleWords.number(parameter.highest()));
	}

	/** A rule as commands write it. */
	static Json json(Rule rule) {
		return new Json().put("id", rule.id()).put("title", rule.title()).put("severity", severity(rule))
				.put("explanation", rule.explanation())
				.put("alternatives", rule.alternatives().stream()
						.map(way -> new Json().put("name", way.name()).put("title", way.title()).fields()).toList())
				.put("parameters",
						rule.parameters().stream()
								.map(each -> new Json().put("id", each.id()).put("title", each.title())
										.put("default", each.usual())
										.put("lowest", each.lowest()).put("highest", each.highest())
										.put("unit", each.unit()).put("whole", each.whole()).fields())
								.toList())
				.put("thresholds",
						rule.thresholds().stream()
								.map(each -> new Json().put("title", each.title()).put("value", each.value())
										.put("unit", each.unit()).put("basis", each.reason().kind().words())
										.put("reason", each.reason().text()).fields())
								.toList());
	}

	private static String severity(Rule rule) {
		return rule.severity().name().toLowerCase(Locale.ROOT);
	}
}
