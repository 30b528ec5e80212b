package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cairnfield.curation.release.Gate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Splits by other methods than DBSCAN are kept, proposed for where they leave noise, measured, released and packed like any other. */
class SplitMethodTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void takeIn() {
		archive = folder.resolve("archive");
		Cli.ok("intake", "-q", "--archive", archive, "--map",
				TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(220)));
	}

	private JsonObject split(String method) {
		return Cli.ok("split", "-q", "--archive", archive, "--name", "one", "--method", method, "--json").json()
				.getAsJsonArray("splits").get(0).getAsJsonObject();
	}

	@ParameterizedTest
	@ValueSource(strings = { "k-means", "affinity", "kernel-reduction" })
	void isKeptReleasedAndPacked(String method) throws Exception {
		JsonObject split = split(method);
		assertTrue(split.get("method").getAsString().startsWith(method + ", "), split::toString);
		assertTrue(split.get("epsilon").isJsonNull() && split.get("clusters").getAsInt() > 1, split::toString);
		assertTrue(
				split.get("searchReason").getAsString().matches("best of \\d+ tried on held-out training samples, .*"),
				split::toString);
		String proposed = Cli.ok("propose", "-q", "--archive", archive, "--split", "one", "--json").out();
		assertTrue(split.get("noise").getAsInt() > 0 || proposed.contains("\"made\": 0"), proposed);
		List<Object> release = new ArrayList<>(List.of("release", "-q", "--archive", archive, "--person", "L. Lead"));
		for (Gate gate : Gate.values()) {
			release.addAll(List.of("--override", gate.key() + "=for a trial only"));
		}
		Cli.ok(release.toArray());
		Cli.ok("export", "-q", "--archive", archive, "--out", folder.resolve("out"), "--format", "pack", "--release",
				"1.0.0");
		try (Stream<Path> files = Files.walk(folder.resolve("out"))) {
			assertTrue(files.anyMatch(file -> file.toString().endsWith(".cfpk")), "a pack for devices");
		}
	}

	@Test
	void theBestOfAllSaysWhatItTried() {
		Cli best = Cli.ok("split", "--archive", archive, "--name", "one", "--method", "best");
		assertTrue(best.err().matches(
				"(?s).*one: held-out error by method: dbscan [0-9.]+ m at .*; k-means [0-9.]+ m at .*; affinity .*; kernel-reduction .*"),
				best::err);
	}

	@ParameterizedTest
	@ValueSource(strings = { "k-means-overlap", "orthogonal-search", "plain", "chosen", "dbscan" })
	void saysWhyAnotherIsNotKept(String method) {
		Cli.run("split", "--archive", archive, "--name", "one", "--method", method).ended(ExitCode.USAGE)
				.says("a split by " + method + " is not kept: ");
	}

	@Test
	void refusesWhatItDoesNotKnow() {
		Cli.run("split", "--archive", archive, "--name", "one", "--method", "wishing").ended(ExitCode.USAGE)
				.says("k-means", "best");
		Cli.run("split", "--archive", archive, "--name", "one", "--method", "k-means", "--epsilon", "9")
				.ended(ExitCode.USAGE).says("leave --epsilon");
		Cli.run("split", "--map", folder.resolve("survey.csv"), "--method", "k-means").ended(ExitCode.USAGE)
				.says("study");
	}
}
