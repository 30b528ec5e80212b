package org.cairnfield.batch.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** An archive of two sites with a split, and ways to damage it. */
final class SmallArchive {

	private SmallArchive() {
	}

	/** Of 120 samples. */
	static Path make(Path folder) {
		return make(folder, 120);
	}

	/** A map of so many samples, a third as many that test it, a split "all" and its proposals. */
	static Path make(Path folder, int samples) {
		Path archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--archive", archive, "--map",
				TestSurveys.wide(folder.resolve("spring.csv"), TestSurveys.map(samples), "S"));
		Cli.ok("intake", "-q", "--archive", archive, "--test-survey", "--map",
				TestSurveys.wide(folder.resolve("visit.csv"), TestSurveys.visit(samples / 3), "V"));
		Cli.ok("split", "-q", "--archive", archive, "--name", "all", "--epsilon", 120, "--min-pts", 3);
		Cli.ok("propose", "-q", "--archive", archive);
		return archive;
	}

	/** A file of samples of the map. */
	static Path samples(Path archive) {
		return files(archive).stream().filter(file -> file.toString().endsWith(".samples")).findFirst().orElseThrow();
	}

	/** All files of the working folder, those of Git left out. */
	static List<Path> files(Path archive) {
		try (Stream<Path> all = Files.walk(archive)) {
			return all.filter(Files::isRegularFile).filter(file -> !archive.relativize(file).startsWith(".git"))
					.sorted(Comparator.comparing(Path::toString)).toList();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
