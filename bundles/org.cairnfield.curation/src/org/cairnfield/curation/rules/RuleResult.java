package org.cairnfield.curation.rules;

/**
 * What one rule said about one unit of its scope.
 *
 * @param unit   name of the survey, floor or site; empty for the archive
 * @param key    of all that the outcome depends on, the settings included
 * @param nanos  how long it took; 0 where it was taken over
 * @param reused whether it was taken over from the run before
 */
public record RuleResult(String rule, String unit, RuleOutcome outcome, long key, long nanos, boolean reused) {

	/** Whether the other result says the same, however it came about. */
	public boolean saysTheSame(RuleResult other) {
		return rule.equals(other.rule) && unit.equals(other.unit) && outcome.equals(other.outcome);
	}
}
