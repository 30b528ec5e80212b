package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule that has several remedies: the steward chooses. */
class RemedyAlternativeTest {

	private static final String RULE = "repeated-scan";

	@TempDir
	Path folder;
	private Path archive;

	/** Forty places in a row; at every fourth a scan is handed out twice, and once more at the next place. */
	@BeforeEach
	void takeIn() {
		StringBuilder rows = new StringBuilder("x,y,floor,building,A,B,C,D,E,F\n");
		for (int i = 0; i < 40; i++) {
			String scan = String.format(",2,0,Quay,%d,%d,%d,%d,%d,%d\n", -40 - i, -80 + i, -50 - i % 7, -60 - i % 11,
					-70 + i / 2, -55 - i % 5);
			rows.append(i).append(scan);
			if (i % 4 == 0) {
				rows.append(i).append(scan).append(i + 1).append(scan);
			}
		}
		archive = folder.resolve("quay");
		Cli.ok("intake", "-q", "--map", TestSurveys.text(folder.resolve("row.csv"), rows.toString()), "--archive",
				archive);
	}

	private int left() {
		return Cli.run("check", "--json", "-q", "--archive", archive, "--rule", RULE).json().get("samples").getAsInt();
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	@Test
	void listsTheAlternativesOfAFinding() {
		JsonObject check = Cli.run("check", "--json", "-q", "--archive", archive, "--rule", RULE).json();
		JsonArray names = check.getAsJsonArray("findings").get(0).getAsJsonObject().getAsJsonArray("alternatives");
		assertEquals("[\"keep-first\",\"one-a-place\",\"average\"]", names.toString());
		assertTrue(Cli.run("check", "-q", "--archive", archive, "--rule", RULE).out()
				.contains("or --alternative one-a-place, average"));
	}

	@Test
	void measuresEachAlternativeOnTheSameSamplesBeforeAnythingIsDone() {
		JsonObject dry = Cli.ok("remedy", "--json", "-q", "--archive", archive, "--dry-run", "--rule", RULE).json();
		JsonObject remedy = dry.getAsJsonArray("remedies").get(0).getAsJsonObject();
		assertEquals("keep-first", remedy.get("alternative").getAsString());
		List<Integer> samples = new ArrayList<>();
		List<Integer> heldOut = new ArrayList<>();
		remedy.getAsJsonArray("alternatives").forEach(each -> {
			JsonObject effect = each.getAsJsonObject().getAsJsonObject("effect");
			samples.add(effect.get("samples").getAsInt());
			heldOut.add(effect.get("heldOut").getAsInt());
			assertTrue(effect.get("errorAfterM").getAsDouble() > 0, effect::toString);
		});
		assertEquals(List.of(20, 10, 40), samples, remedy::toString);
		assertEquals(1, heldOut.stream().distinct().count(), remedy::toString);
		assertEquals(1, savePoints());
		String words = Cli.ok("remedy", "-q", "--archive", archive, "--dry-run", "--rule", RULE).out();
		assertTrue(words.contains(
				"  --alternative average (Average the scans of each place into one sample): Touches 40 samples"),
				words);
	}

	@Test
	void takesTheFirstUnlessAnotherIsNamed() {
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", RULE);
		assertEquals(40, left());
	}

	@Test
	void doesWhatIsNamedAsOneSavePointThatCanBeTakenBack() {
		Cli.ok("remedy", "-q", "--archive", archive, "--rule", RULE, "--alternative", "one-a-place");
		assertEquals(50, left());
		assertEquals(2, savePoints());
		Cli.ok("restore", "-q", "--archive", archive, "HEAD~1");
		assertEquals(60, left());
		JsonObject done = Cli
				.ok("remedy", "--json", "-q", "--archive", archive, "--rule", RULE, "--alternative", "average").json();
		assertEquals("average",
				done.getAsJsonArray("remedies").get(0).getAsJsonObject().get("alternative").getAsString());
		assertEquals(40, left());
	}

	@Test
	void refusesANameThatTheRulesDoNotHave() {
		Cli.run("remedy", "-q", "--archive", archive, "--rule", RULE, "--alternative", "keep-last")
				.ended(ExitCode.USAGE).says(RULE, "'keep-last'",
						"keep-first, one-a-place, average");
		Cli.run("remedy", "-q", "--archive", archive, "--rule", "wrong-floor", "--alternative", "average")
				.ended(ExitCode.USAGE).says("wrong-floor",
						"one remedy only");
		assertEquals(1, savePoints());
	}
}
