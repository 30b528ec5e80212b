package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A steward's work on the demo surveys, from an empty folder: take in, check, remedy, compare, restore. */
class ArchiveStoryTest {

	@TempDir
	Path folder;
	private Path archive;
	private List<Path> surveys;

	@BeforeEach
	void takeInTheDemo() throws IOException {
		Cli.ok("simulate", "--out", folder, "-q");
		try (Stream<Path> files = Files.list(folder.resolve("surveys"))) {
			surveys = files.sorted().toList();
		}
		archive = folder.resolve("marrow-quay");
		JsonObject taken = Cli.ok("intake", "--json", "-q", "--map", surveys, "--archive", archive).json()
				.getAsJsonObject("archive");
		assertEquals(surveys.size(), taken.getAsJsonArray("surveys").size());
		assertTrue(taken.getAsJsonArray("takenBefore").isEmpty());
	}

	private JsonObject check() {
		Cli done = Cli.run("check", "--json", "-q", "--archive", archive);
		assertEquals(done.json().get("errors").getAsInt() > 0 ? ExitCode.FINDINGS_ERROR : ExitCode.FINDINGS_WARNING,
				done.code());
		return done.json();
	}

	private static Set<String> rules(JsonObject check) {
		Set<String> rules = new TreeSet<>();
		for (JsonElement finding : check.getAsJsonArray("findings")) {
			rules.add(finding.getAsJsonObject().get("rule").getAsString());
		}
		return rules;
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	@Test
	void noticesAFileTakenTwice() {
		JsonObject again = Cli.ok("intake", "--json", "-q", "--map", surveys.get(0), "--archive", archive).json();
		assertEquals(1, again.getAsJsonObject("archive").getAsJsonArray("takenBefore").size());
		assertTrue(again.getAsJsonObject("archive").getAsJsonArray("surveys").isEmpty());
		assertEquals(1, savePoints());
	}

	@Test
	void findsThePlantedFaultsAndRemediesThem() {
		Set<String> planted = Set.of("duplicate-survey", "swapped-axes", "wrong-floor", "hotspot",
				"moved-access-point");
		assertTrue(rules(check()).containsAll(planted), () -> rules(check()).toString());
		JsonObject dry = Cli
				.ok("remedy", "--json", "-q", "--archive", archive, "--dry-run", "--rule", "swapped-axes", "--rule",
						"wrong-floor", "--rule", "duplicate-survey")
				.json();
		assertEquals(3, dry.getAsJsonArray("remedies").size());
		assertEquals(1, savePoints());
		JsonObject floors = dry.getAsJsonObject("effects").getAsJsonObject("wrong-floor");
		assertEquals(11, floors.get("samples").getAsInt());
		assertTrue(floors.get("rightFloorAfter").getAsDouble() > floors.get("rightFloorBefore").getAsDouble() + 0.002,
				floors::toString);
		assertTrue(floors.get("low").getAsDouble() <= floors.get("errorAfterM").getAsDouble()
				- floors.get("errorBeforeM").getAsDouble()
				&& floors.get("errorAfterM").getAsDouble() - floors.get("errorBeforeM").getAsDouble() <= floors
						.get("high").getAsDouble(),
				floors::toString);
		for (JsonElement remedy : dry.getAsJsonArray("remedies")) {
			assertTrue(remedy.getAsJsonObject().getAsJsonObject("effect").get("errorBeforeM").getAsDouble() > 1,
					remedy::toString);
		}
		assertEquals(11 + 28 + 262, dry.getAsJsonObject("effect").get("samples").getAsInt(), "all together");
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", "swapped-axes", "--rule", "wrong-floor", "--rule",
				"duplicate-survey", "--person", "A. Steward");
		assertEquals(2, savePoints());
		Set<String> left = rules(check());
		assertFalse(left.contains("swapped-axes") || left.contains("wrong-floor") || left.contains("duplicate-survey"),
				left::toString);
		String compared = Cli.ok("compare", "-q", "--archive", archive, "HEAD~1").out();
		assertTrue(compared.contains("262 samples set aside") && compared.contains("39 samples moved"), compared);
	}

	@Test
	void statesThePrecisionToExpectOfEachFinding() {
		Map<String, JsonObject> findings = new HashMap<>();
		check().getAsJsonArray("findings")
				.forEach(f -> findings.put(f.getAsJsonObject().get("rule").getAsString(), f.getAsJsonObject()));
		for (String rule : List.of("swapped-axes", "wrong-floor", "hotspot", "moved-access-point")) {
			assertTrue(findings.get(rule).get("precision").getAsDouble() >= 0.8, findings.get(rule)::toString);
		}
		assertTrue(findings.get("duplicate-survey").get("precision").isJsonNull(), "nothing is planted for it");
		assertTrue(findings.values().stream().allMatch(f -> f.get("effect").isJsonNull()), "not asked for");
	}

	@Test
	void restoresAnEarlierStateByANewSavePoint() {
		JsonObject before = check();
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", "swapped-axes");
		Cli.ok("restore", "-q", "--archive", archive, "HEAD~1");
		assertEquals(3, savePoints());
		assertEquals(before, check());
		assertTrue(Cli.ok("compare", "-q", "--archive", archive, "HEAD~2").out().contains("no difference"));
	}

	@Test
	void saysWhatIsWrongWithAnArchiveThatIsNone() {
		Cli.run("check", "--archive", folder.resolve("nowhere")).ended(ExitCode.ARCHIVE).says("nowhere");
		Cli.run("check", "--archive", folder.resolve("surveys")).ended(ExitCode.ARCHIVE).says("surveys");
		Cli.run("restore", "--archive", archive, "0123456789").ended(ExitCode.ARCHIVE);
		Cli.run("check", "--archive", archive, "--rule", "no-such-rule").ended(ExitCode.USAGE).says("no-such-rule",
				"swapped-axes");
		Cli.run("remedy", "--archive", archive).ended(ExitCode.USAGE).says("--rule");
	}

	@Test
	void reportsADamagedFileWithItsLineAndChangesNothing() throws IOException {
		Path samples = archive.resolve("surveys/tide-house/th-spring.samples");
		String text = Files.readString(samples);
		Files.writeString(samples, text.substring(0, text.length() / 2));
		Cli.run("check", "-q", "--archive", archive).ended(ExitCode.DAMAGED).says("th-spring.samples");
		Cli.run("remedy", "-q", "--archive", archive, "--rule", "swapped-axes").ended(ExitCode.DAMAGED)
				.says("nothing was changed");
		assertEquals(text.substring(0, text.length() / 2), Files.readString(samples));
	}
}
