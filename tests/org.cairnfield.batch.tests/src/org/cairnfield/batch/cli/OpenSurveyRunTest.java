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
import org.cairnfield.testkit.OpenSets;
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

	/** Runs and checks that the choice costs little accuracy and saves comparisons. */
	private JsonObject run(List<Path> map, List<Path> test, double mostError, double mostCompared) {
		JsonObject json = Cli.ok("run", "--map", map, "--test", test, "--out", folder, "--json", "-q").json();
		assertTrue(Files.exists(folder.resolve("error-distribution.svg")));
		JsonArray variants = json.getAsJsonArray("variants");
		JsonObject plain = variants.get(0).getAsJsonObject();
		JsonObject chosen = variants.get(4).getAsJsonObject();
		assertEquals("chosen", chosen.get("name").getAsString());
		double error = chosen.get("meanErrorM").getAsDouble() / plain.get("meanErrorM").getAsDouble();
		double compared = chosen.get("comparisonsPerQuery").getAsDouble()
				/ plain.get("comparisonsPerQuery").getAsDouble();
		assertTrue(error <= mostError, "error of the choice to plain: " + error);
		assertTrue(compared <= mostCompared, "comparisons of the choice to plain: " + compared);
		return json;
	}

	@Test
	void walkedFloor() throws IOException {
		JsonObject json = run(OpenSets.files("walked-floor", "01/trn"), OpenSets.files("walked-floor", "01/tst"), 1,
				0.2);
		assertEquals("100", json.get("notHeard").getAsString());
		assertEquals(20, json.get("accessPoints").getAsInt());
		assertEquals(0, json.get("quarantined").getAsInt());
	}

	@Test
	void anOfficeOnAGrid() throws IOException {
		JsonObject json = run(OpenSets.files("grid-areas", "office_train"), OpenSets.files("grid-areas", "office_test"),
				1, 0.2);
		assertEquals("-200", json.get("notHeard").getAsString());
		assertEquals(5, json.get("accessPoints").getAsInt());
		assertEquals(4_860, json.get("samples").getAsInt());
	}

	@Test
	void threeBuildings() throws IOException {
		assumeTrue(OpenSets.isSlowWanted(), "skipped: takes a minute; set CAIRNFIELD_SLOW to run it");
		JsonObject json = run(OpenSets.files("three-buildings", "Training"),
				OpenSets.files("three-buildings", "Testing"), 1.05, 0.2);
		assertEquals(21_205, json.get("samples").getAsInt());
		assertEquals(2_720, json.get("testSamples").getAsInt());
	}
}
