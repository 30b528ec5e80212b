package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Threshold;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(name = "rules", mixinStandardHelpOptions = true,
		description = "List the rules: what each looks for, its remedies where there are several, and the numbers it goes by, each with unit and reason.")
final class RulesCommand implements Callable<Integer> {

	@Spec
	CommandSpec spec;

	@Mixin
	RuleArgs ruleArgs;

	@Option(names = "--json", description = "One JSON object on standard output.")
	boolean json;

	@Override
	public Integer call() {
		List<Rule> rules = ruleArgs.rules(spec);
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			out.println(new Json().put("rules", rules.stream().map(rule -> json(rule).fields()).toList()));
		} else {
			rules.forEach(rule -> print(rule, out));
		}
		return ExitCode.OK;
	}

	private static void print(Rule rule, PrintWriter out) {
		out.println(rule.id() + ": " + rule.title() + " (" + severity(rule) + ")");
		out.println("  " + rule.explanation());
		for (Alternative way : rule.alternatives()) {
			out.println("  --alternative " + way.name() + ": " + way.title());
		}
		for (Threshold threshold : rule.thresholds()) {
			out.println("  " + threshold.words());
		}
		out.println();
	}

	/** A rule as commands write it. */
	static Json json(Rule rule) {
		return new Json().put("id", rule.id()).put("title", rule.title()).put("severity", severity(rule)).put("explanation", rule.explanation())
				.put("alternatives", rule.alternatives().stream()
						.map(way -> new Json().put("name", way.name()).put("title", way.title()).fields()).toList())
				.put("thresholds", rule.thresholds().stream().map(each -> new Json().put("title", each.title()).put("value", each.value())
						.put("unit", each.unit()).put("basis", each.reason().kind().words()).put("reason", each.reason().text()).fields()).toList());
	}

	private static String severity(Rule rule) {
		return rule.severity().name().toLowerCase(Locale.ROOT);
	}
}
