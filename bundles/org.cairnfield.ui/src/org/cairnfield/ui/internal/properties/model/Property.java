package org.cairnfield.ui.internal.properties.model;

import java.util.Objects;

/**
 * One line about an object.
 *
 * @param name  what it is, with the unit where it has one
 * @param value formatted; {@link #NONE} where nothing is known
 * @param about an explanation; may be empty
 */
public record Property(String name, String value, String about) {

	/** Stands for a value that is not known or not set. */
	public static final String NONE = "–";

	public Property {
		Objects.requireNonNull(name);
		Objects.requireNonNull(about);
		value = value == null || value.isBlank() ? NONE : value;
	}
}
