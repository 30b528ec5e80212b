package org.cairnfield.curation.rules;

import java.util.Objects;

/**
 * One of several ways to remedy the findings of a rule.
 *
 * @param name  kebab-case, unique within the rule, never changed: the command line takes it
 * @param title what it does, for people
 */
public record Alternative(String name, String title) {

	/** Of rules that know one way only. */
	static final Alternative ONLY = new Alternative("", "");

	public Alternative {
		Objects.requireNonNull(name);
		Objects.requireNonNull(title);
	}
}
