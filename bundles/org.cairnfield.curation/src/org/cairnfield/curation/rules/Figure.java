package org.cairnfield.curation.rules;

import java.util.Objects;

/**
 * One number that a finding rests on.
 *
 * @param name what it is, in a few words
 * @param unit such as {@code m}, {@code dB}, {@code dBm}; empty for counts and shares
 */
public record Figure(String name, double value, String unit) {

	public Figure {
		Objects.requireNonNull(name);
		Objects.requireNonNull(unit);
	}
}
