package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.RulesAsTold;
import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "check", description = "${bundle:CheckCommand_what}")
final class CheckCommand extends ArchiveCommand {

	@Mixin
	AskedRuleArgs ruleArgs;

	@Option(names = "--most", paramLabel = "N", defaultValue = "5", descriptionKey = "CheckCommand_most")
	int most;

	@Override
	void checkArguments() {
		if (most < 0) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.CheckCommand_mostMustBeANumber, most));
		}
		ruleArgs.check(spec);
	}

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		RulesAsTold told = ruleArgs.asked(archive, this);
		RuleCheck check = RuleCheck.of(archive.archive(), told.run(), workers);
		if (json) {
			printJson(AskedRuleArgs.into(json(check, told.run().rules()), told));
		} else {
			print(check, told);
		}
		reportBroken(check);
		endWith(check.worst().map(CheckCommand::exitCode).orElse(ExitCode.OK));
	}

	private static int exitCode(Severity worst) {
		return switch (worst) {
		case ERROR -> ExitCode.FINDINGS_ERROR;
		case WARNING -> ExitCode.FINDINGS_WARNING;
		default -> ExitCode.OK;
		};
	}

	private void print(RuleCheck check, RulesAsTold told) {
		Map<String, List<Finding>> byRule = new TreeMap<>();
		check.open().forEach(f -> byRule.computeIfAbsent(f.rule(), r -> new ArrayList<>()).add(f));
		for (Rule rule : told.run().rules()) {
			List<Finding> findings = byRule.getOrDefault(rule.id(), List.of());
			long waived = check.waived().stream().filter(f -> f.rule().equals(rule.id())).count();
			if (findings.isEmpty() && waived == 0) {
				continue;
			}
			out().println(rule.id() + ": " + rule.title() + " (" + findings.size()
					+ (waived == 0 ? ")" : Words.bind(Messages.CheckCommand_waived, waived)));
			for (Finding finding : findings.subList(0, Math.min(most, findings.size()))) {
				out().println("  " + word(finding.severity()) + "  " + finding.contentKey() + "  " + finding.message()
						+ (finding.precision().isEmpty() ? ""
								: String.format(Locale.ROOT, Messages.CheckCommand_rightHere,
										100 * finding.precision().getAsDouble()))
						+ finding.remedy()
								.map(r -> Words.bind(Messages.CheckCommand_remedy, r.preview(), others(finding)))
								.orElse(""));
			}
			if (findings.size() > most) {
				out().println(Words.bind(Messages.CheckCommand_andMore, findings.size() - most));
			}
		}
		out().println();
		AskedRuleArgs.print(told, this);
		out().println(Words.bind(Messages.CheckCommand_errorsWarningsNotesWaivedIn, count(check, Severity.ERROR),
				count(check, Severity.WARNING), count(check, Severity.NOTE), check.waived().size(),
				check.map().surveyed().size()));
	}

	private static String others(Finding finding) {
		List<String> others = finding.alternatives().stream().skip(1).map(Alternative::name).toList();
		return others.isEmpty() ? "" : Words.bind(Messages.CheckCommand_orAlternative, String.join(", ", others));
	}

	private static long count(RuleCheck check, Severity severity) {
		return check.open().stream().filter(f -> f.severity() == severity).count();
	}

	private static String word(Severity severity) {
		return severity.name().toLowerCase(Locale.ROOT);
	}

	private static Json json(RuleCheck check, List<Rule> rules) {
		return new Json().put("samples", check.map().surveyed().size()).put("errors", count(check, Severity.ERROR))
				.put("warnings", count(check, Severity.WARNING)).put("notes", count(check, Severity.NOTE))
				.put("rules", rules.stream().map(rule -> RulesCommand.json(rule).fields()).toList())
				.put("findings", check.open().stream().map(f -> json(f).put("waived", false).fields()).toList())
				.put("waived", check.waived().stream().map(f -> json(f).put("waived", true).fields()).toList());
	}

	private static Json json(Finding f) {
		return new Json().put("rule", f.rule()).put("severity", word(f.severity()))
				.put("precision", f.precision().isPresent() ? f.precision().getAsDouble() : null)
				.put("message", f.message())
				.put("subjects", f.subjects().stream().map(Subject::label).toList())
				.put("figures", f.evidence().stream()
						.map(e -> new Json().put("name", e.name()).put("value", e.value()).put("unit", e.unit())
								.fields())
						.toList())
				.put("remedy", f.remedy().map(Remedy::preview).orElse(null))
				.put("alternatives", f.alternatives().stream().map(Alternative::name).toList()).put("effect", null)
				.put("key", f.contentKey());
	}
}
