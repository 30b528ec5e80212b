package org.cairnfield.ui.internal.properties.model;

import java.util.Objects;

import org.cairnfield.curation.edit.Editable;

/**
 * One line about an object.
 *
 * @param name  what it is, with the unit where it has one
 * @param value formatted; {@link #NONE} where nothing is known
 * @param about an explanation; may be empty
 * @param field to change it; null where it is only to be read
 */
public record Property(String name, String value, String about, Editable field) {

	/** Stands for a value that is not known or not set. */
	public static final String NONE = "–";

	public Property {
		Objects.requireNonNull(name);
		Objects.requireNonNull(about);
		value = value == null || value.isBlank() ? NONE : value;
	}

	/** One to be read. */
	public Property(String name, String value, String about) {
		this(name, value, about, null);
	}
}
