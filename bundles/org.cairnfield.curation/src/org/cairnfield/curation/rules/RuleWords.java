package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.text.Words;

/** Figures and lists put in words, the same in every locale. */
public final class RuleWords {

	private static final int LISTED = 5;

	private RuleWords() {
	}

	/** With one digit behind the point: {@code 3.4 m}. */
	public static String metres(double metres) {
		return String.format(Locale.ROOT, "%.1f m", metres);
	}

	/** With one digit behind the point: {@code -4.9 dB}. */
	public static String decibels(double decibels) {
		return String.format(Locale.ROOT, Messages.RuleWords_db, decibels);
	}

	/** {@code 12 %}, below ten {@code 1.3 %}. */
	public static String percent(double share) {
		return String.format(Locale.ROOT, share < 0.0995 ? "%.1f %%" : "%.0f %%", 100 * share);
	}

	/** A place: {@code x 12.40 m, y 7.85 m}. */
	public static String place(double xMetres, double yMetres) {
		return String.format(Locale.ROOT, "x %.2f m, y %.2f m", xMetres, yMetres);
	}

	/** The shortest way to write it: {@code 3}, {@code 0.25}. */
	public static String number(double value) {
		return value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value)
				: Double.toString(value);
	}

	/** A number with its unit, where it has one: {@code 3}, {@code 2.5 m/s}. */
	public static String measure(double value, String unit) {
		return number(value) + (unit.isEmpty() ? "" : ' ' + unit);
	}

	/** The first few by name, the rest by number: {@code a, b and 7 more}. */
	public static String list(Collection<String> names) {
		List<String> all = new ArrayList<>(names);
		if (all.size() <= LISTED) {
			return all.size() < 2 ? String.join("", all)
					: Words.bind(Messages.RuleWords_and, String.join(", ", all.subList(0, all.size() - 1)),
							all.get(all.size() - 1));
		}
		return Words.bind(Messages.RuleWords_and, String.join(", ", all.subList(0, LISTED - 1)),
				String.format(Locale.ROOT, Messages.RuleWords_more, all.size() - LISTED + 1));
	}
}
