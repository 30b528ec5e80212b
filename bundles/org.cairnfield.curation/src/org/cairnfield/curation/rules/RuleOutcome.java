package org.cairnfield.curation.rules;

import java.util.List;

/** What came of asking a rule about one unit of its scope. */
public sealed interface RuleOutcome {

	/** The rule looked and said this, perhaps nothing. */
	record Found(List<Finding> findings) implements RuleOutcome {
		public Found {
			findings = List.copyOf(findings);
		}
	}

	/** There was nothing that the rule could judge by. */
	record NotApplicable(String reason) implements RuleOutcome {
	}

	/** The rule itself broke. The others are not touched by that. */
	record Failed(String what) implements RuleOutcome {
	}

	static RuleOutcome found(List<Finding> findings) {
		return new Found(findings);
	}

	static RuleOutcome notApplicable(String reason) {
		return new NotApplicable(reason);
	}

	/** The findings, none unless {@link Found}. */
	default List<Finding> findings() {
		return this instanceof Found found ? found.findings() : List.of();
	}
}
