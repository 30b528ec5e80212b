package org.cairnfield.batch.cli;

import org.cairnfield.archive.fault.ArchiveException;
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
	static Person orUser(Person given) throws ArchiveException {
		String user = System.getProperty("user.name", "unknown");
		try {
			return given != null ? given : Person.named(user);
		} catch (IllegalArgumentException e) {
			throw new ArchiveException("the user of this machine has no name that a history can keep: '" + user + "'", "say who it is with --person", e);
		}
	}
}
