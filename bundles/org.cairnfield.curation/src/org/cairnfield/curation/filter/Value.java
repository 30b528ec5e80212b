package org.cairnfield.curation.filter;

import java.math.BigDecimal;
import java.util.Locale;

import org.cairnfield.curation.rules.Severity;

/** What a field is compared with. The text form is what an expression would say. */
sealed interface Value {

	/** Nothing is known. */
	record None() implements Value {
		@Override
		public String toString() {
			return "none";
		}
	}

	/** A text, or part of one. */
	record Text(String text) implements Value {
		@Override
		public String toString() {
			return '"' + text + '"';
		}
	}

	/** A number in the unit of the field. */
	record Number(double number) implements Value {
		@Override
		public String toString() {
			return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
		}
	}

	/**
	 * A time as exactly as it was written: a day, minute or second.
	 *
	 * @param from  milliseconds since 1970-01-01T00:00Z
	 * @param until likewise, the first that no longer belongs to it
	 */
	record Time(String text, long from, long until) implements Value {
		@Override
		public String toString() {
			return text;
		}

		/** Order of a moment to this time. */
		int order(long millis) {
			return millis < from ? -1 : millis < until ? 0 : 1;
		}
	}

	/** Kept, or set aside. */
	record State(boolean kept) implements Value {
		@Override
		public String toString() {
			return kept ? "kept" : "aside";
		}
	}

	/** How severe the worst finding is. */
	record Grade(Severity severity) implements Value {
		@Override
		public String toString() {
			return severity.name().toLowerCase(Locale.ROOT);
		}
	}
}
