package org.cairnfield.curation.rules;

import java.util.Objects;

import org.cairnfield.core.text.Words;

/**
 * Why a number is what it is.
 *
 * @param kind how far it can be relied on
 * @param text a phrase for people, without a point at its end
 */
public record Reason(Kind kind, String text) {

	/** What a number rests on. */
	public enum Kind {
		/** Somebody tried other values, and looked at what came of them. */
		MEASURED("measured"),
		/** It follows from physics, geometry or statistics, or a published standard states it. */
		STANDARD("standard"),
		/** So it is usually done. */
		PRACTICE(Messages.Reason_commonPractice),
		/** Nothing of the above: a value from memory or by judgement. */
		JUDGED(Messages.Reason_judgementNotMeasured);

		private final String words;

		Kind(String words) {
			this.words = words;
		}

		/** For people. */
		public String words() {
			return words;
		}
	}

	public Reason {
		Objects.requireNonNull(kind);
		if (text.isBlank()) {
			throw new IllegalArgumentException("a reason needs words");
		}
	}

	public static Reason measured(String text) {
		return new Reason(Kind.MEASURED, text);
	}

	/** @param text what other values did on three simulated campuses with planted faults */
	public static Reason onCampuses(String text) {
		return measured(Words.bind(Messages.Reason_onSimulatedCampusesWithPlanted, text));
	}

	public static Reason standard(String text) {
		return new Reason(Kind.STANDARD, text);
	}

	public static Reason practice(String text) {
		return new Reason(Kind.PRACTICE, text);
	}

	public static Reason judged(String text) {
		return new Reason(Kind.JUDGED, text);
	}

	/** Kind and text. */
	@Override
	public String toString() {
		return kind.words + ": " + text;
	}
}
