package org.cairnfield.batch.cli;

import java.util.List;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.check.RulesAsTold;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Which cleaning rules are asked, and what they are told: what the archive keeps, unless options say otherwise for this once. */
final class AskedRuleArgs extends RuleArgs {

	@Option(names = "--set", paramLabel = "RULE.NUMBER=VALUE", descriptionKey = "AskedRuleArgs_set")
	List<String> set = List.of();

	/** Refuses what is wrong in any archive. */
	void check(CommandSpec spec) {
		rules(spec);
		forOnce(spec);
	}

	/** The rules by what an archive keeps, and by what the options say. One that is named is asked even if the archive does not ask it. */
	RulesAsTold asked(OpenArchive archive, SurveyCommand command) {
		RulesAsTold told = RulesAsTold.of(rules(command.spec), RuleSettings.of(archive.archive()),
				forOnce(command.spec), !ids.isEmpty());
		told.problems().forEach(command::note);
		return told;
	}

	private RuleSettings forOnce(CommandSpec spec) {
		return RuleSettings.just(set.stream().map(
				text -> read(spec, text, (rule, parameter, value) -> RuleSettings.One.of(rule, parameter, value, null)))
				.toList());
	}

	/** What becomes of a number that is set. */
	@FunctionalInterface
	interface Setting<T> {
		T of(Rule rule, Parameter parameter, double value);
	}

	/** Reads {@code RULE.NUMBER=VALUE}. */
	static <T> T read(CommandSpec spec, String text, Setting<T> setting) {
		int equal = text.indexOf('=');
		int point = text.indexOf('.');
		if (point < 1 || equal < point) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.AskedRuleArgs_isNotOfTheForm, text));
		}
		try {
			Rule rule = CleaningRules.registry().rule(text.substring(0, point));
			return setting.of(rule, rule.parameter(text.substring(point + 1, equal)),
					Double.parseDouble(text.substring(equal + 1).strip()));
		} catch (NumberFormatException e) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.AskedRuleArgs_isNoNumber, text.substring(equal + 1)), e);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage(), e);
		}
	}

	/** What rules are told otherwise than usual, for scripts. */
	static Json into(Json json, RulesAsTold told) {
		return json.put("settings", told.told().stream().map(each -> new Json().put("rule", each.rule().id())
				.put("parameter", each.parameter() == null ? null : each.parameter().id())
				.put("value", each.parameter() == null ? null : each.value())
				.put("default", each.parameter() == null ? null : each.parameter().usual())
				.put("asked", each.parameter() != null || each.forOnce())
				.put("reason", each.kept().reason())
				.put("from", each.forOnce() ? Messages.AskedRuleArgs_commandLine : "archive").fields())
				.toList())
				.put("settingProblems", told.problems());
	}

	/** What rules are told otherwise than usual, for a person. */
	static void print(RulesAsTold told, SurveyCommand command) {
		told.words().forEach(words -> command.out().println(Words.bind(Messages.AskedRuleArgs_ruleSetting, words)));
	}
}
