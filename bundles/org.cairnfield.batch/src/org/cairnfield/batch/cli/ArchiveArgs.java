package org.cairnfield.batch.cli;

import java.nio.file.Path;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.Person;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which archive, and who works on it. */
final class ArchiveArgs {

	@Option(names = "--archive", required = true, paramLabel = "DIR", descriptionKey = "ArchiveArgs_archive")
	Path folder;

	@Option(names = "--person", converter = PersonArgument.class, paramLabel = "NAME", descriptionKey = "ArchiveArgs_person")
	Person person;

	@Option(names = "--note", paramLabel = "TEXT", descriptionKey = "ArchiveArgs_note")
	String note;

	@Mixin
	DamageArgs damageArgs;

	Person person() throws ArchiveException {
		return PersonArgument.orUser(person);
	}
}
