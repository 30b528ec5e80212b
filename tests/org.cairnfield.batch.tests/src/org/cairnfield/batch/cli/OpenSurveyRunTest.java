package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job on openly published surveys, as a stranger would run it. Skipped where they are absent: the
 * property or environment variable CAIRNFIELD_DATA names their folder, otherwise {@code ../shared/data}
 * beside the project. The three buildings take a minute: they run where the property or environment
 * variable CAIRNFIELD_SLOW is set.
 */
class OpenSurveyRunTest {

	@TempDir
	Path folder;

	private static String told(String name) {
		return System.getProperty(name, System.getenv(name));
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

	private static List<Path> files(String set, String part) throws IOException {
		Path folder = data().resolve(set);
		assumeTrue(Files.isDirectory(folder), "skipped: no open survey data at " + folder);
		try (Stream<Path> all = Files.walk(folder)) {
			List<Path> files = all.filter(Files::isRegularFile).filter(f -> f.toString().replace('\\', '/').contains(part)).sorted().toList();
			assertTrue(!files.isEmpty(), "no file with " + part + " in its name at " + folder);
			return files;
		}
	}

	/** Runs and checks that the choice costs little accuracy and saves comparisons. */
	private JsonObject run(List<Path> map, List<Path> test, double mostError, double mostCompared) {
		JsonObject json = Cli.ok("run", "--map", map, "--test", test, "--out", folder, "--json", "-q").json();
		assertTrue(Files.exists(folder.resolve("error-distribution.svg")));
		JsonArray variants = json.getAsJsonArray("variants");
		JsonObject plain = variants.get(0).getAsJsonObject();
		JsonObject chosen = variants.get(4).getAsJsonObject();
		assertEquals("chosen", chosen.get("name").getAsString());
		double error = chosen.get("meanErrorM").getAsDouble() / plain.get("meanErrorM").getAsDouble();
		double compared = chosen.get("comparisonsPerQuery").getAsDouble() / plain.get("comparisonsPerQuery").getAsDouble();
		assertTrue(error <= mostError, "error of the choice to plain: " + error);
		assertTrue(compared <= mostCompared, "comparisons of the choice to plain: " + compared);
		return json;
	}

	@Test
	void walkedFloor() throws IOException {
		JsonObject json = run(files("walked-floor", "01/trn"), files("walked-floor", "01/tst"), 1, 0.2);
		assertEquals("100", json.get("notHeard").getAsString());
		assertEquals(20, json.get("accessPoints").getAsInt());
		assertEquals(0, json.get("quarantined").getAsInt());
	}

	@Test
	void anOfficeOnAGrid() throws IOException {
		JsonObject json = run(files("grid-areas", "office_train"), files("grid-areas", "office_test"), 1, 0.2);
		assertEquals("-200", json.get("notHeard").getAsString());
		assertEquals(5, json.get("accessPoints").getAsInt());
		assertEquals(4_860, json.get("samples").getAsInt());
	}

	@Test
	void threeBuildings() throws IOException {
		assumeTrue(told("CAIRNFIELD_SLOW") != null, "skipped: takes a minute; set CAIRNFIELD_SLOW to run it");
		JsonObject json = run(files("three-buildings", "Training"), files("three-buildings", "Testing"), 1.05, 0.2);
		assertEquals(21_205, json.get("samples").getAsInt());
		assertEquals(2_720, json.get("testSamples").getAsInt());
	}
}
