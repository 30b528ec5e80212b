package org.cairnfield.curation.rules;

import java.util.Locale;
import java.util.Objects;

/**
 * A number that a rule can be told.
 *
 * @param id      kebab-case, unique within the rule
 * @param title   what it is, for people
 * @param usual   taken unless told otherwise, within the range
 * @param lowest  inclusive
 * @param highest inclusive
 * @param unit    such as {@code m} or {@code dB}; empty for a count or a share
 * @param whole   whether only whole numbers make sense
 * @param reason  why the usual value is what it is
 */
public record Parameter(String id, String title, double usual, double lowest, double highest, String unit,
		boolean whole, Reason reason) {

	public Parameter {
		Objects.requireNonNull(id);
		Objects.requireNonNull(title);
		Objects.requireNonNull(unit);
		Objects.requireNonNull(reason);
		if (!(lowest <= usual && usual <= highest)) {
			throw new IllegalArgumentException(id + ": " + usual + " is not within " + lowest + " … " + highest);
		}
	}

	/** A measure with a unit. */
	public static Parameter number(String id, String title, double usual, double lowest, double highest, String unit,
			Reason reason) {
		return new Parameter(id, title, usual, lowest, highest, unit, false, reason);
	}

	/** A count. */
	public static Parameter count(String id, String title, int usual, int lowest, int highest, Reason reason) {
		return new Parameter(id, title, usual, lowest, highest, "", true, reason);
	}

	/** A share, 0 … 1. */
	public static Parameter share(String id, String title, double usual, Reason reason) {
		return new Parameter(id, title, usual, 0, 1, "", false, reason);
	}

	/** Its usual value as a number that the rule goes by. */
	Threshold threshold() {
		return new Threshold(title, usual, unit, reason);
	}

	/** The value itself. @throws IllegalArgumentException in words for the person who set it, where it is out of range */
	public double checked(double value) {
		if (!(value >= lowest && value <= highest)) {
			throw new IllegalArgumentException(String.format(Locale.ROOT, "%s must be within %s … %s%s, was %s", id,
					RuleWords.number(lowest), RuleWords.number(highest), unit.isEmpty() ? "" : " " + unit,
					RuleWords.number(value)));
		}
		if (whole && value != Math.rint(value)) {
			throw new IllegalArgumentException(id + " must be a whole number, was " + RuleWords.number(value));
		}
		return value;
	}
}
