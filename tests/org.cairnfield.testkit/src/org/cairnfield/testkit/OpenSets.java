package org.cairnfield.testkit;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Open survey sets, which lie in {@code ../shared/data} beside the project or where the property or environment variable
 * CAIRNFIELD_DATA says; tests without them are skipped.
 */
public final class OpenSets {

	private OpenSets() {
	}

	private static String told(String name) {
		return System.getProperty(name, System.getenv(name));
	}

	/** Whether tests that take minutes are wanted. */
	public static boolean isSlowWanted() {
		return told("CAIRNFIELD_SLOW") != null;
	}

	private static Path data() {
		String told = told("CAIRNFIELD_DATA");
		if (told != null) {
			return Path.of(told);
		}
		// tests run in the project's root or in a module's folder below it
		for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
			Path data = at.resolveSibling("shared").resolve("data");
			if (Files.isDirectory(data)) {
				return data;
			}
		}
		return Path.of("..", "shared", "data");
	}

	/** Files of a set with a part in their path, sorted. */
	public static List<Path> files(String set, String part) throws IOException {
		Path folder = data().resolve(set);
		assumeTrue(Files.isDirectory(folder), "skipped: no open survey data at " + folder);
		return below(folder, part);
	}

	/** Likewise of any folder. */
	public static List<Path> below(Path folder, String part) throws IOException {
		try (Stream<Path> all = Files.walk(folder)) {
			List<Path> files = all.filter(Files::isRegularFile)
					.filter(f -> f.toString().replace('\\', '/').contains(part)).sorted().toList();
			assertTrue(!files.isEmpty(), "no file with " + part + " in its name at " + folder);
			return files;
		}
	}
}
