package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import org.cairnfield.archive.history.Person;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is worked on: survey files, or what an archive keeps. */
final class SourceArgs {

	@ArgGroup(exclusive = true, multiplicity = "1")
	Source source;

	@Mixin
	IntakeArgs.Reading reading;

	@Option(names = "--person", converter = PersonArgument.class, paramLabel = "NAME", descriptionKey = "SourceArgs_person")
	Person person;

	@Option(names = "--note", paramLabel = "TEXT", descriptionKey = "SourceArgs_note")
	String note;

	/** One of the two. */
	static final class Source {

		@Option(names = "--map", arity = "1..*", required = true, paramLabel = "FILE", descriptionKey = "SourceArgs_map")
		List<Path> map;

		@Option(names = "--archive", required = true, paramLabel = "DIR", descriptionKey = "SourceArgs_archive")
		Path archive;
	}

	boolean isArchive() {
		return source.archive != null;
	}
}
