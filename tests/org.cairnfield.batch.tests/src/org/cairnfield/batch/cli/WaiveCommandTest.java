package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WaiveCommandTest {

	private static final String RULE = "few-readings";
	private static final String OTHER = "exact-duplicate";
	private static final int FINDINGS = 3;

	@TempDir
	Path folder;
	private Path archive;

	/** Each survey has samples of one reading, which is one finding, and a sample that comes twice, which is another. */
	@BeforeEach
	void takeIn() {
		List<Path> surveys = new ArrayList<>();
		for (int i = 0; i < FINDINGS; i++) {
			StringBuilder rows = new StringBuilder("x,y,floor,building,A,B,C,D,E,F\n");
			for (int k = 0; k < 12; k++) {
				rows.append(k + ",2,0,Quay,-50,-6" + k % 10 + ",-7" + (i + k) % 10 + ",-8" + i + ",-6" + i + ",-55\n");
			}
			rows.append("20,2,0,Quay,-5" + i + ",,,,,\n");
			rows.append("3,2,0,Quay,-50,-63,-7" + (i + 3) % 10 + ",-8" + i + ",-6" + i + ",-55\n");
			surveys.add(TestSurveys.text(folder.resolve("part-" + i + ".csv"), rows.toString()));
		}
		archive = folder.resolve("quay");
		Cli.ok("intake", "-q", "--map", surveys, "--archive", archive);
	}

	private JsonObject check() {
		return Cli.run("check", "--json", "-q", "--archive", archive, "--rule", RULE, "--rule", OTHER).json();
	}

	private static List<String> keys(JsonObject check, String list, String rule) {
		List<String> keys = new ArrayList<>();
		for (JsonElement element : check.getAsJsonArray(list)) {
			JsonObject finding = element.getAsJsonObject();
			if (finding.get("rule").getAsString().equals(rule)) {
				keys.add(finding.get("key").getAsString());
			}
		}
		return keys;
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	@Test
	void listsWaiversAndTakesOneBack() {
		Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--reason", "the cellar hears one only", "--person",
				"M.Q.");
		List<JsonElement> waivers = Cli.ok("waivers", "--json", "-q", "--archive", archive).json()
				.getAsJsonArray("waivers").asList();
		assertEquals(FINDINGS, waivers.size());
		JsonObject first = waivers.get(0).getAsJsonObject();
		assertEquals("M.Q.", first.get("person").getAsString());
		assertEquals("the cellar hears one only", first.get("reason").getAsString());
		assertEquals(RULE, first.get("rule").getAsString());
		assertEquals(1, first.get("covers").getAsInt());
		assertTrue(first.get("about").getAsString().contains("1 sample"), first::toString);
		String id = first.get("id").getAsString();
		assertTrue(Cli.ok("waivers", "-q", "--archive", archive).out().contains(id + "  " + RULE + ", by M.Q. at "));
		int before = savePoints();
		Cli.run("waivers", "-q", "--archive", archive, "--withdraw", id, "--withdraw", "00000000").ended(ExitCode.USAGE)
				.says("'00000000'");
		assertEquals(before, savePoints());
		Cli.ok("waivers", "-q", "--archive", archive, "--withdraw", id, "--person", "R.S.");
		assertEquals(before + 1, savePoints());
		assertEquals(1, keys(check(), "findings", RULE).size());
		assertEquals(FINDINGS - 1,
				Cli.ok("waivers", "--json", "-q", "--archive", archive).json().getAsJsonArray("waivers").size());
	}

	@Test
	void listsAWaiverOfWhatIsMended() {
		Cli.ok("waive", "-q", "--archive", archive, "--rule", OTHER, "--reason", "kept twice on purpose");
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", RULE);
		assertTrue(Cli.ok("waivers", "-q", "--archive", archive).out().contains("kept twice on purpose"));
	}

	@Test
	void waivesAllOfARuleInOneSavePointWithReasonAndPerson() throws IOException {
		JsonObject before = check();
		assertEquals(FINDINGS, keys(before, "findings", RULE).size(), before::toString);
		Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--reason", " the cellar hears one only ",
				"--person", "M.Q.");
		JsonObject after = check();
		assertEquals(List.of(), keys(after, "findings", RULE));
		assertEquals(keys(before, "findings", RULE), keys(after, "waived", RULE));
		assertEquals(keys(before, "findings", OTHER), keys(after, "findings", OTHER));
		assertEquals(FINDINGS,
				before.get("errors").getAsInt() + before.get("warnings").getAsInt() + before.get("notes").getAsInt()
						- after.get("errors").getAsInt() - after.get("warnings").getAsInt()
						- after.get("notes").getAsInt());
		assertEquals(2, savePoints());
		String structure = Files.readString(archive.resolve("archive.xmi"));
		assertTrue(structure.contains("reason=\"the cellar hears one only\" person=\"M.Q.\""), structure);
	}

	@Test
	void checkTellsHowManyAreWaivedAndCountsThemNoMore() {
		Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--rule", OTHER, "--reason", "known");
		Cli check = Cli.ok("check", "-q", "--archive", archive, "--rule", RULE, "--rule", OTHER);
		assertTrue(check.out().contains(" (0, " + FINDINGS + " waived)"), check::toString);
		assertTrue(check.out().contains("0 errors, 0 warnings, 0 notes, "), check::toString);
	}

	@Test
	void waivesOnlyTheFindingsNamed() {
		List<String> keys = keys(check(), "findings", RULE);
		Cli printed = Cli.run("check", "-q", "--archive", archive, "--rule", RULE);
		keys.forEach(key -> assertTrue(printed.out().contains("  " + key + "  "), printed::toString));
		Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--finding", keys.get(0), "--finding",
				keys.get(2).substring(0, 10), "--reason", "known");
		assertEquals(List.of(keys.get(1)), keys(check(), "findings", RULE));
	}

	@Test
	void aDryRunTellsAndChangesNothing() {
		JsonObject before = check();
		JsonObject dry = Cli
				.ok("waive", "--json", "-q", "--archive", archive, "--rule", RULE, "--reason", "known", "--dry-run")
				.json();
		assertEquals(FINDINGS, dry.getAsJsonArray("waived").size());
		assertTrue(Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--reason", "known", "--dry-run").out()
				.contains("would waive " + keys(before, "findings", RULE).get(0)));
		assertEquals(before, check());
		assertEquals(1, savePoints());
	}

	@Test
	void aSecondTimeThereIsNothingToWaive() {
		String key = keys(check(), "findings", RULE).get(0);
		Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--reason", "known");
		assertTrue(Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--reason", "again").out()
				.contains("nothing to waive"));
		Cli.ok("waive", "--archive", archive, "--rule", RULE, "--finding", key, "--reason", "again")
				.says("waived already");
		assertEquals(2, savePoints());
	}

	@Test
	void restoreTakesWaiversBack() {
		JsonObject before = check();
		Cli.ok("waive", "-q", "--archive", archive, "--rule", RULE, "--reason", "known");
		Cli.ok("restore", "-q", "--archive", archive, "HEAD~1");
		assertEquals(before, check());
	}

	@Test
	void saysWhatIsWrongAndChangesNothing() {
		Cli.run("waive", "--archive", archive, "--reason", "known").ended(ExitCode.USAGE).says("--rule");
		Cli.run("waive", "--archive", archive, "--rule", RULE).ended(ExitCode.USAGE).says("--reason");
		Cli.run("waive", "--archive", archive, "--rule", RULE, "--reason", " \t").ended(ExitCode.USAGE).says("--reason",
				"empty");
		Cli.run("waive", "--archive", archive, "--rule", "no-such-rule", "--reason", "known").ended(ExitCode.USAGE)
				.says("no-such-rule", RULE);
		String known = keys(check(), "findings", RULE).get(0);
		String unknown = known.startsWith("0000") ? "ffff0000" : "00000000";
		Cli.run("waive", "-q", "--archive", archive, "--rule", RULE, "--finding", known, "--finding", unknown,
				"--reason", "known")
				.ended(ExitCode.USAGE).says("no finding of " + RULE, unknown);
		Cli.run("waive", "--archive", archive, "--rule", RULE, "--finding", "7", "--reason", "known")
				.ended(ExitCode.USAGE).says("at least 4");
		Cli.run("waive", "--archive", archive, "--rule", RULE, "--reason", "known", "--person", "<M.Q.>")
				.ended(ExitCode.USAGE)
				.says("--person", "angle brackets");
		Cli.run("waive", "--archive", folder.resolve("nowhere"), "--rule", RULE, "--reason", "known")
				.ended(ExitCode.ARCHIVE).says("nowhere");
		assertEquals(1, savePoints());
		assertFalse(keys(check(), "findings", RULE).isEmpty());
	}
}
