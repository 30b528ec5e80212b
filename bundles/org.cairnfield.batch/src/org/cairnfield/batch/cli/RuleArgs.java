package org.cairnfield.batch.cli;

import java.util.List;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleRegistry;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Which cleaning rules. */
class RuleArgs {

	@Option(names = "--rule", paramLabel = "ID", descriptionKey = "RuleArgs_rule")
	List<String> ids = List.of();

	final List<Rule> rules(CommandSpec spec) {
		RuleRegistry registry = CleaningRules.registry();
		try {
			return ids.isEmpty() ? registry.all() : registry.some(ids);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
