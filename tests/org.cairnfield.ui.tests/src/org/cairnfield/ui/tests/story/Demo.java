package org.cairnfield.ui.tests.story;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.demo.DemoArchive;
import org.cairnfield.curation.release.KnownReleases;
import org.cairnfield.exchange.IntakeException;

/** The demo archive, made once for all stories and copied for each that works in it. */
final class Demo {

	private static Path made;

	private Demo() {
	}

	/**
	 * Makes a folder that holds the demo, as fresh as from the command that makes it. Copies are one archive to the list of
	 * releases seen on this computer, so each story begins with a list of its own.
	 */
	static synchronized Path copy(Path to) throws IOException {
		if (made == null) {
			made = Files.createTempDirectory(Files.createDirectories(Path.of(System.getProperty("user.home"))), "demo");
			Path archive = made.resolve("museums");
			try {
				DemoArchive.create(new ArchiveStore(), archive, Workers.inline()).close();
			} catch (IntakeException e) {
				throw new AssertionError(e);
			}
		}
		System.setProperty(KnownReleases.PROPERTY, Files.createTempDirectory(made, "state").toString());
		Path from = made.resolve("museums");
		try (Stream<Path> all = Files.walk(from)) {
			for (Path each : (Iterable<Path>) all::iterator) {
				Files.copy(each, to.resolve(from.relativize(each).toString()));
			}
		}
		return to;
	}
}
