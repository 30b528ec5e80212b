package org.cairnfield.batch.cli;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.text.Words;
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

	/** That person, or else who works on this computer. */
	static Person orUser(Person given) throws ArchiveException {
		try {
			return given != null ? given : Person.ofComputer();
		} catch (IllegalArgumentException e) {
			throw new ArchiveException(
					Words.bind(Messages.PersonArgument_neitherNorTheAccountOf, Person.VARIABLE, e.getMessage()),
					Messages.PersonArgument_sayWhoItIsWith, e);
		}
	}
}
