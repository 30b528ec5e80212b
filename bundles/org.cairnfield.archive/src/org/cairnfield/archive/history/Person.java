package org.cairnfield.archive.history;

/**
 * Who makes a save point, as the history keeps it.
 *
 * @param name  a name or initials; not blank, without line breaks and angle brackets
 * @param email may be empty; likewise
 */
public record Person(String name, String email) {

	/** @throws IllegalArgumentException for what Git could not keep */
	public Person {
		name = name.strip();
		email = email.strip();
		if (name.isEmpty() || !isPlain(name) || !isPlain(email)) {
			throw new IllegalArgumentException("a person has a name, and neither line breaks nor angle brackets: '" + name + "' '"
					+ email + "'");
		}
	}

	private static boolean isPlain(String text) {
		return text.chars().noneMatch(c -> c == '<' || c == '>' || c < ' ' || c == 0x7f);
	}

	/** Without an address. */
	public static Person named(String name) {
		return new Person(name, "");
	}
}
