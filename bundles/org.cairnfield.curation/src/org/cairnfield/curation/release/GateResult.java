package org.cairnfield.curation.release;

import java.util.Locale;

import org.cairnfield.core.text.Words;

/**
 * What came of one gate.
 *
 * @param figure   NaN where it could not be had
 * @param bound    of the archive
 * @param evidence what the figure was computed from, in words
 * @param overrule who let it pass all the same, and why; null where nobody did
 */
public record GateResult(Gate gate, double figure, double bound, String evidence, Overrule overrule) {

	/**
	 * Somebody takes the responsibility.
	 *
	 * @param person a name
	 * @param reason not blank
	 */
	public record Overrule(String person, String reason) {

		/** @throws IllegalArgumentException where one of them is blank */
		public Overrule {
			person = person.strip();
			reason = reason.strip();
			if (person.isEmpty() || reason.isEmpty()) {
				throw new IllegalArgumentException("a gate is overridden by a named person and with a reason");
			}
		}
	}

	/** Whether the figure meets the bound. */
	public boolean isMet() {
		return gate.meets(figure, bound);
	}

	/** Whether it holds the release back. */
	public boolean holds() {
		return !isMet() && overrule == null;
	}

	/** The same, overridden; where the gate is met there is nothing to override. */
	public GateResult overridden(Overrule by) {
		return isMet() ? this : new GateResult(gate, figure, bound, evidence, by);
	}

	/** The figure for people; counts whole, ratios with three decimals. */
	public String shownFigure() {
		return Double.isNaN(figure) ? Messages.GateResult_notKnown : shown(figure);
	}

	/** The bound for people, such as "at most 1.05". */
	public String shownBound() {
		return (gate.atMost() ? Messages.GateResult_atMost : Messages.GateResult_atLeast) + GateSet.number(bound);
	}

	private static String shown(double value) {
		return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.3f", value);
	}

	/** Met, not met, or overridden by whom. */
	public String verdict() {
		return isMet() ? "met"
				: overrule == null ? Messages.GateResult_notMet
						: Words.bind(Messages.GateResult_overriddenBy, overrule.person(), overrule.reason());
	}
}
