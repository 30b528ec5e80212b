package org.cairnfield.batch.cli;

import org.cairnfield.archive.history.Person;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads who makes a change from the command line. */
final class PersonArgument implements ITypeConverter<Person> {

	@Override
	public Person convert(String name) {
		try {
			return Person.named(name);
		} catch (IllegalArgumentException e) {
			throw new TypeConversionException(e.getMessage());
		}
	}

	/** That person, or else the user of this machine. */
	static Person orUser(Person given) {
		return given != null ? given : Person.named(System.getProperty("user.name", "unknown"));
	}
}
