package org.cairnfield.exchange.internal.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How a table says that an access point was not heard: one or more numbers (100, -110 …) or words (NaN …).
 * A blank cell always says so.
 */
public final class NotHeard {

	/** The name of the convention that only a blank cell means not heard. */
	public static final String EMPTY = "empty";
	/** Words that stand for a missing value in tables, in lower case. */
	public static final Set<String> WORDS = Set.of("nan", "na", "n/a", "#n/a", "null", "none", "nil", "-", "--",
			"inf", "-inf", "infinity", "-infinity", "missing", "?");

	private final String text;
	private final double[] numbers;
	private final List<String> words;

	private NotHeard(String text) {
		this.text = text;
		String[] parts = text.strip().split("\\s+");
		this.numbers = Arrays.stream(parts).mapToDouble(p -> CellNumbers.parse(p, false))
				.filter(v -> !Double.isNaN(v)).toArray();
		this.words = Arrays.stream(parts).filter(p -> Double.isNaN(CellNumbers.parse(p, false)))
				.map(p -> p.toLowerCase(Locale.ROOT)).filter(p -> !p.equals(EMPTY)).toList();
	}

	/** @param text {@value #EMPTY}, or values separated by blanks */
	public static NotHeard of(String text) {
		return new NotHeard(text.isBlank() ? EMPTY : text.strip());
	}

	/** True where a number means not heard. */
	public boolean is(double value) {
		for (double number : numbers) {
			if (number == value) {
				return true;
			}
		}
		return false;
	}

	/** True where a cell that is no number means not heard. */
	public boolean isWord(String cell) {
		return cell.isBlank() || words.contains(cell.strip().toLowerCase(Locale.ROOT));
	}

	/** True where only a blank cell means not heard. */
	public boolean isOnlyEmpty() {
		return numbers.length == 0 && words.isEmpty();
	}

	@Override
	public String toString() {
		return text;
	}
}
