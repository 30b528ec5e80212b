package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.testkit.OpenSets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyCommandTest {

	/** Of {@code run}'s variants. */
	private static final List<String> FIGURES = List.of("meanErrorM", "meanLowM", "meanHighM", "medianErrorM", "rmseM",
			"p75M", "p90M", "p95M", "ce50M", "ce95M",
			"floorHitRate", "siteHitRate", "toPlain", "toPlainLow", "toPlainHigh", "comparisonsPerQuery",
			"comparisonShare", "matchTimeRatio");
	private static final List<String> FAST = List.of("--method", "dbscan", "dbscan+correlation", "k-means", "chosen");
	private static final List<String> TIMES = List.of("matchTimeRatio", "matchTimeToPlain3w", "offlineS", "choiceS");

	@TempDir
	Path folder;
	private Path north;
	private Path south;
	private Path northTest;
	private Path southTest;

	@BeforeEach
	void simulate() {
		north = TestSurveys.plain(folder.resolve("north.csv"), TestSurveys.map(100));
		south = TestSurveys.plain(folder.resolve("south.csv"), TestSurveys.map(80));
		northTest = TestSurveys.plain(folder.resolve("north-test.csv"), TestSurveys.visit(40));
		southTest = TestSurveys.plain(folder.resolve("south-test.csv"), TestSurveys.visit(20));
	}

	private static List<JsonObject> rows(JsonObject study) {
		List<JsonObject> rows = new ArrayList<>();
		study.getAsJsonArray("rows").forEach(row -> rows.add(row.getAsJsonObject()));
		return rows;
	}

	/** How many test samples each map was measured with, and whether they were held out. */
	private static Map<String, String> tested(JsonObject study) {
		Map<String, String> tested = new TreeMap<>();
		rows(study).forEach(row -> tested.put(row.get("map").getAsString(),
				row.get("heldOut").getAsBoolean() ? "held out" : row.get("testSamples").getAsString()));
		return tested;
	}

	/** All but what the clock says. */
	private static JsonElement withoutTimes(JsonObject study) {
		JsonArray rows = study.getAsJsonArray("rows").deepCopy();
		rows.forEach(row -> TIMES.forEach(row.getAsJsonObject()::remove));
		return rows;
	}

	@Test
	void printsOneRowAMapAndMethodWithTheFiguresOfARun() throws IOException {
		Path out = folder.resolve("out");
		JsonObject study = Cli.ok("study", "--map", north, "--map", south, "--test", northTest, "--test", southTest,
				"--out", out, "--json", FAST).json();
		assertEquals(study, JsonParser.parseString(Files.readString(out.resolve("study.json"))));
		assertEquals(Map.of("north", "40", "south", "20"), tested(study));
		List<String> lines = Files.readAllLines(out.resolve("study.csv"));
		List<String> header = List.of(lines.get(0).split(","));
		assertEquals(12, lines.size() - 1);
		JsonObject run = Cli.ok("run", "--map", north, "--test", northTest, "--out", folder.resolve("run"), "--json")
				.json();
		for (int i = 0; i < 12; i++) {
			String[] cells = lines.get(i + 1).split(","); // "how", which has commas, comes after all figures
			JsonObject row = rows(study).get(i);
			assertEquals(row.get("map").getAsString() + row.get("method").getAsString(),
					cells[header.indexOf("map")] + cells[header.indexOf("method")]);
			assertTrue(row.get("skipped").isJsonNull());
			for (String figure : FIGURES) {
				assertEquals(row.get(figure).getAsDouble(), Double.parseDouble(cells[header.indexOf(figure)]), figure);
			}
		}
		for (int plain = 0; plain < 2; plain++) {
			JsonObject variant = run.getAsJsonArray("variants").get(plain).getAsJsonObject();
			for (String figure : FIGURES.subList(0, FIGURES.size() - 1)) {
				assertEquals(variant.get(figure).getAsDouble(), rows(study).get(plain).get(figure).getAsDouble(),
						figure);
			}
		}
		String page = Files.readString(out.resolve("study.html"));
		assertTrue(page.contains("<h2>north</h2>") && page.contains("<svg")
				&& page.contains("common practice and has no source"), page);
		assertFalse(page.contains("<script") || page.contains("http-equiv=\"refresh\"") || page.contains("src="),
				"the page needs something from elsewhere");
	}

	@Test
	void doesNotDoAgainWhatIsDone() {
		Object[] words = { "study", "--map", north, "--test", northTest, "--out", folder.resolve("out"), "--json",
				FAST };
		Cli first = Cli.ok(words).says("north, k-means (5 of 6, about");
		Cli second = Cli.ok(words);
		assertFalse(second.err().contains("of 6"), second::toString);
		assertEquals(first.json(), second.json());
		Cli other = Cli.ok("study", "--map", north, "--test", southTest, "--out", folder.resolve("out"), "--json", FAST)
				.says("north, plain (1 of 6)");
		assertEquals(Map.of("north", "20"), tested(other.json()));
	}

	@Test
	void theSameSeedGivesTheSameDigits() {
		JsonObject once = Cli.ok("study", "--map", north, "--seed", 3, "--out", folder.resolve("a"), "--json", FAST)
				.json();
		JsonObject twice = Cli.ok("study", "--map", north, "--seed", 3, "--out", folder.resolve("b"), "--json", FAST)
				.json();
		assertEquals(withoutTimes(once), withoutTimes(twice));
	}

	@Test
	void aTestSurveyBelongsToTheMapBeforeIt() {
		Cli mixed = Cli
				.ok("study", "--map", north, "--map", south, "--name", "southern", "--test", southTest, "--out",
						folder.resolve("out"), "--json", "--method", "k-means")
				.says("north has no test survey");
		assertEquals(Map.of("north", "held out", "southern", "20"), tested(mixed.json()));
		JsonObject one = Cli.ok("study", "--map", north, south, "--name", "both", "--test", northTest, southTest,
				"--out", folder.resolve("one"), "--json", "--method", "k-means").json();
		assertEquals(Map.of("both", "60"), tested(one));
	}

	@Test
	void saysWhatItDoesNotUnderstand() {
		Path out = folder.resolve("out");
		Cli.run("study", "--map", north, "--map", south, "--map", north, "--test", northTest, "--test", southTest,
				"--out", out).ended(ExitCode.USAGE)
				.says("3 maps and 2 test surveys");
		Cli.run("study", "--out", out).ended(ExitCode.USAGE).says("--map FILE… or --archive DIR");
		Cli.run("study", "--name", "x", "--map", north, "--out", out).ended(ExitCode.USAGE).says("'x' has none");
		Cli.run("study", "--map", "--out", out).ended(ExitCode.USAGE).says("--map");
		Cli.run("study", "--map", north, "--method", "magic", "--out", out).ended(ExitCode.USAGE).says("magic",
				"kernel-reduction");
		Cli.run("study", "--map", north, "--time", "0", "--out", out).ended(ExitCode.USAGE).says("--time");
		Cli.run("study", "--map", folder.resolve("none.csv"), "--out", out).ended(ExitCode.INPUT).says("none.csv");
		Cli.run("study", "--map", north, "--out", north).ended(ExitCode.INPUT).says("there is a file of the name");
	}

	@Test
	void takesTheMapAndTheTestSurveysOfAnArchive() {
		Path archive = folder.resolve("museum");
		Cli.ok("intake", "--map", north, "--archive", archive, "--person", "Ada Moor");
		Cli.ok("intake", "--map", northTest, "--archive", archive, "--test-survey", "--person", "Ada Moor");
		JsonObject study = Cli.ok("study", "--archive", archive, "--map", south, "--test", southTest, "--out",
				folder.resolve("out"), "--json", "--method", "k-means").json();
		assertEquals(Map.of("museum", "40", "south", "20"), tested(study));
		assertEquals("museum", rows(study).get(0).get("map").getAsString());
	}

	@Test
	void saysWhatWasSkippedAndWhy() {
		Cli hasty = Cli.ok("study", "--map", north, "--test", northTest, "--time", "0.001", "--out",
				folder.resolve("out"), "--method", "k-means", "chosen");
		assertTrue(hasty.out().contains("k-means skipped: too slow: not done in 0.001 s"), hasty::toString);
		assertTrue(hasty.out().contains("chosen skipped"), hasty::toString);
	}

	/** Skipped where the set is absent. */
	@Test
	void splitsAnOpenSurveyWithinTheBudget() throws IOException {
		JsonObject study = Cli.ok("study", "--map", OpenSets.files("walked-floor", "01/trn"), "--test",
				OpenSets.files("walked-floor", "01/tst"), "--name", "walked", "--out",
				folder.resolve("out"), "--json", "-q", "--method", "dbscan", "dbscan+correlation", "k-means", "chosen")
				.json();
		JsonObject chosen = rows(study).get(5);
		assertEquals("chosen", chosen.get("method").getAsString());
		assertTrue(chosen.get("withinBudget").getAsBoolean(), chosen::toString);
		assertTrue(chosen.get("toPlain").getAsDouble() <= 1, chosen::toString);
	}
}
