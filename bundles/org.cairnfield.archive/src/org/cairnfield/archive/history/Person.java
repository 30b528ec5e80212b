package org.cairnfield.archive.history;

/**
 * Who makes a save point, as the history keeps it.
 *
 * @param name  a name or initials; not blank, without line breaks and angle brackets
 * @param email may be empty; likewise
 */
public record Person(String name, String email) {

	/** The environment variable that names who works on this computer. */
	public static final String VARIABLE = "CAIRNFIELD_PERSON";

	private static final String PROPERTY = "cairnfield.person"; // in place of the variable, for tests

	/** What stands for a character that a wrong character set has destroyed. */
	private static final char UNREADABLE = '\uFFFD';

	/** @throws IllegalArgumentException for what Git could not keep, and for names that lost characters on their way here */
	public Person {
		name = name.strip();
		email = email.strip();
		if (name.isEmpty() || !isPlain(name) || !isPlain(email)) {
			throw new IllegalArgumentException(
					"a person has a name, without line breaks, angle brackets, and characters that could not be read: '"
							+ name + "' '"
							+ email + "'");
		}
	}

	private static boolean isPlain(String text) {
		return text.chars().noneMatch(c -> c == '<' || c == '>' || Character.isISOControl(c) || c == UNREADABLE);
	}

	/**
	 * Who works on this computer: whom {@link #VARIABLE} names, or else the account.
	 *
	 * @throws IllegalArgumentException where that is no name that a history can keep
	 */
	public static Person ofComputer() {
		String named = System.getProperty(PROPERTY, System.getenv(VARIABLE));
		return named(named == null || named.isBlank() ? System.getProperty("user.name", "unknown") : named);
	}

	/** Without an address. */
	public static Person named(String name) {
		return new Person(name, "");
	}
}
