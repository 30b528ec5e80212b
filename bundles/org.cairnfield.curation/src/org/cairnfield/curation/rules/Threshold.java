package org.cairnfield.curation.rules;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A number that a rule goes by.
 *
 * @param title what it is, for people
 * @param unit  such as {@code m} or {@code dB}; empty for a count, a share or a ratio
 */
public record Threshold(String title, double value, String unit, Reason reason) {

	public Threshold {
		Objects.requireNonNull(title);
		Objects.requireNonNull(unit);
		Objects.requireNonNull(reason);
	}

	/** A count, a share or a ratio. */
	public Threshold(String title, double value, Reason reason) {
		this(title, value, "", reason);
	}

	/** The value as a count. */
	public int count() {
		return (int) Math.round(value);
	}

	/** All of several lists. */
	@SafeVarargs
	public static List<Threshold> all(List<Threshold>... lists) {
		return Stream.of(lists).flatMap(List::stream).distinct().toList();
	}

	/** For people: {@code places in a row: 3 (judgement, not measured: …)}. */
	public String words() {
		return title + ": " + RuleWords.measure(value, unit) + " (" + reason + ")";
	}
}
