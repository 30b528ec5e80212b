package org.cairnfield.model.values;

import java.util.Locale;
import java.util.Objects;

/**
 * What a finding is about. Text form: kind, a blank, id; for instance {@code sample sh-spring/SH-0412}.
 *
 * @param id of a sample as {@link SampleKey} has it, of a floor {@code site/level}, of a split its id, of others their id
 */
public record Subject(Kind kind, String id) {

	/** Kinds of things that a finding can be about. */
	public enum Kind {
		ARCHIVE, SITE, FLOOR, SURVEY, SAMPLE, ACCESS_POINT, DEVICE;

		/** Lower case with hyphens. */
		@Override
		public String toString() {
			return name().toLowerCase(Locale.ROOT).replace('_', '-');
		}
	}

	public Subject {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(id);
	}

	/** A sample. */
	public static Subject of(SampleKey key) {
		return new Subject(Kind.SAMPLE, key.toString());
	}

	/** @throws IllegalArgumentException for a text that names no kind */
	public static Subject parse(String text) {
		int blank = text.indexOf(' ');
		String kind = blank < 0 ? text : text.substring(0, blank);
		for (Kind known : Kind.values()) {
			if (known.toString().equals(kind)) {
				return new Subject(known, blank < 0 ? "" : text.substring(blank + 1));
			}
		}
		throw new IllegalArgumentException("no kind of subject: '" + text + "'");
	}

	/** The text form. */
	@Override
	public String toString() {
		return id.isEmpty() ? kind.toString() : kind + " " + id;
	}
}
