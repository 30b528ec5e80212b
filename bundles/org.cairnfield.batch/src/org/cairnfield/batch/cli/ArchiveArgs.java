package org.cairnfield.batch.cli;

import java.nio.file.Path;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.Person;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which archive, and who works on it. */
final class ArchiveArgs {

	@Option(names = "--archive", required = true, paramLabel = "DIR", description = "Folder of the archive.")
	Path folder;

	@Option(names = "--person", converter = PersonArgument.class, paramLabel = "NAME", description = "Who makes the change; otherwise whom the environment variable CAIRNFIELD_PERSON names, or else the user of this machine.")
	Person person;

	@Option(names = "--note", paramLabel = "TEXT", description = "Why, for the history.")
	String note;

	@Mixin
	DamageArgs damageArgs;

	Person person() throws ArchiveException {
		return PersonArgument.orUser(person);
	}
}
