package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a run of rules found, by rule, then by unit.
 */
public record RunResult(List<RuleResult> results) {

	/** Before any run. */
	public static final RunResult NONE = new RunResult(List.of());

	public RunResult {
		results = List.copyOf(results);
	}

	/** All findings, by rule, then by unit. */
	public List<Finding> findings() {
		List<Finding> all = new ArrayList<>();
		results.forEach(r -> all.addAll(r.outcome().findings()));
		return all;
	}

	/** The findings of one rule. */
	public List<Finding> findings(String rule) {
		return findings().stream().filter(f -> f.rule().equals(rule)).toList();
	}

	/** Results of rules that broke. */
	public List<RuleResult> failed() {
		return results.stream().filter(r -> r.outcome() instanceof RuleOutcome.Failed).toList();
	}

	/** How many results were worked out in this run. */
	public long computed() {
		return results.stream().filter(r -> !r.reused()).count();
	}

	/** The worst severity found, if anything was. */
	public Optional<Severity> worst() {
		return findings().stream().map(Finding::severity).min(Severity::compareTo);
	}

	/** Whether the other run says the same about the same. */
	public boolean saysTheSame(RunResult other) {
		if (results.size() != other.results.size()) {
			return false;
		}
		for (int i = 0; i < results.size(); i++) {
			if (!results.get(i).saysTheSame(other.results.get(i))) {
				return false;
			}
		}
		return true;
	}
}
