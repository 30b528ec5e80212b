package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which split a release takes is chosen by name and kept; another one changes nothing by itself. */
class SplitOfReleaseTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void keepTwoSplits() {
		archive = folder.resolve("quay");
		Cli.ok("intake", "-q", "--map", TestSurveys.plain(folder.resolve("spring.csv"), TestSurveys.map(300)),
				"--archive", archive);
		Cli.ok("intake", "-q", "--map", TestSurveys.plain(folder.resolve("visit.csv"), TestSurveys.visit(60)),
				"--test-survey", "--archive", archive);
		Cli.ok("split", "-q", "--archive", archive, "--name", "published", "--epsilon", 90, "--min-pts", 4);
		Cli.ok("split", "-q", "--archive", archive, "--name", "automatic");
	}

	private JsonObject gates(Object... more) {
		List<Object> arguments = new ArrayList<>(List.of("gate", "-q", "--json", "--archive", archive));
		arguments.addAll(List.of(more));
		return Cli.run(arguments.toArray()).ended(ExitCode.GATES).json();
	}

	private static String splits(JsonObject gates) {
		for (JsonElement gate : gates.getAsJsonArray("gates")) {
			if (gate.getAsJsonObject().get("gate").getAsString().equals("proposals-open")) {
				return gate.getAsJsonObject().get("evidence").getAsString();
			}
		}
		throw new AssertionError(gates.toString());
	}

	private JsonObject release(String... split) {
		List<Object> arguments = new ArrayList<>(
				List.of("release", "-q", "--json", "--archive", archive, "--person", "L. Lead"));
		gates(split.length == 0 ? new Object[0] : new Object[] { "--split", split[0] }).getAsJsonArray("gates")
				.forEach(gate -> {
					if (!gate.getAsJsonObject().get("met").getAsBoolean()) {
						arguments.add("--override");
						arguments.add(gate.getAsJsonObject().get("gate").getAsString() + "=a trial");
					}
				});
		for (String name : split) {
			arguments.add("--split");
			arguments.add(name);
		}
		return Cli.ok(arguments.toArray()).json();
	}

	private List<String> manifestSplits(String version) throws IOException {
		JsonObject manifest = JsonParser.parseString(Files.readString(archive.resolve("releases/" + version + ".json")))
				.getAsJsonObject();
		return manifest.getAsJsonArray("splits").asList().stream().map(JsonElement::getAsString).toList();
	}

	@Test
	void aSplitMadeLaterChangesNothing() {
		assertTrue(splits(gates()).startsWith("splits published:"), splits(gates()));
		assertTrue(splits(gates("--split", "automatic")).startsWith("splits automatic:"));
		assertTrue(splits(gates()).startsWith("splits published:"), "asking about another one keeps nothing");
		JsonObject measured = Cli.ok("measure", "-q", "--json", "--archive", archive).json();
		assertEquals("published", measured.get("split").getAsString());
		JsonObject other = Cli.ok("measure", "-q", "--json", "--archive", archive, "--split", "automatic").json();
		assertEquals("automatic", other.get("split").getAsString());
		assertNotEquals(measured.getAsJsonArray("variants").get(4), other.getAsJsonArray("variants").get(4));
	}

	@Test
	void twoReleasesOfTwoSplits() throws IOException {
		JsonObject first = release();
		assertEquals(List.of("published"), manifestSplits("1.0.0"));
		JsonObject second = release("automatic");
		assertEquals(List.of("automatic"), manifestSplits(second.get("released").getAsString()));
		assertNotEquals(first.get("digest"), second.get("digest"));
		assertTrue(splits(gates()).startsWith("splits automatic:"), "the choice is kept");
		assertEquals(ExitCode.OK, Cli.run("verify", "-q", "--archive", archive).code());
		Path one = folder.resolve("one");
		Path two = folder.resolve("two");
		Cli.ok("export", "-q", "--archive", archive, "--out", one, "--format", "pack", "--split", "published");
		Cli.ok("export", "-q", "--archive", archive, "--out", two, "--format", "pack");
		assertFalse(java.util.Arrays.equals(pack(one), pack(two)));
		Path report = folder.resolve("report.html");
		Cli.ok("report", "-q", "--archive", archive, "--out", report, "--split", "published");
		assertTrue(Files.readString(report).contains("published"));
		Cli.run("export", "-q", "--archive", archive, "--out", one, "--release", "1.0.0", "--split", "automatic")
				.ended(ExitCode.USAGE)
				.says("a release has its splits already");
		Cli.run("gate", "-q", "--archive", archive, "--split", "none").ended(ExitCode.ARCHIVE).says("no split 'none'",
				"automatic, published");
		Cli.run("gate", "-q", "--archive", archive, "--split", "published", "--split", "automatic")
				.ended(ExitCode.NOT_ENOUGH).says("overlap");
	}

	private static byte[] pack(Path folder) throws IOException {
		try (var files = Files.list(folder)) {
			return Files.readAllBytes(files.filter(file -> file.toString().endsWith(".cfpk")).findFirst()
					.orElseThrow(() -> new AssertionError("no pack in " + folder)));
		}
	}
}
