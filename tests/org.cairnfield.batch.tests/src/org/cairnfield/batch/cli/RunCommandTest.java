package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
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
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCommandTest {

	private static final List<String> NAMES = List.of("plain", "plain-3w", "split", "split+proposals", "chosen");
	private static final List<String> FIGURES = List.of("meanErrorM", "medianErrorM", "rmseM", "p75M", "p90M", "p95M",
			"floorHitRate", "siteHitRate", "comparisonsPerQuery", "matchTimeRatio");

	@TempDir
	Path folder;
	private Path survey;
	private Path visit;

	@BeforeEach
	void simulate() {
		survey = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(150));
		visit = TestSurveys.plain(folder.resolve("visit.csv"), TestSurveys.visit(40));
	}

	private Cli run(Path out, Object... more) {
		return Cli.ok("run", "--map", survey, "--out", out, List.of(more));
	}

	/** The contract, and figures that agree with every file of the same run. */
	@Test
	void printsOneJsonObjectThatAgreesWithTheFiles() throws IOException {
		Path out = folder.resolve("out");
		Cli done = run(out, "--test", visit, "--epsilon", 130, "--min-pts", 3, "--json");
		JsonObject json = done.json();
		assertEquals(json, JsonParser.parseString(Files.readString(out.resolve("run.json"))));
		assertEquals(150, json.get("samples").getAsInt());
		assertEquals(40, json.get("testSamples").getAsInt());
		assertEquals(Csv.of(survey).header().size() - 4, json.get("accessPoints").getAsInt());
		assertEquals("empty", json.get("notHeard").getAsString());
		assertEquals(130, json.getAsJsonObject("split").get("epsilon").getAsDouble());
		assertEquals(3, json.getAsJsonObject("split").get("minPts").getAsInt());
		splitAgrees(json, Csv.of(out.resolve("split-map.csv")), Csv.of(out.resolve("proposals.csv")));
		measuresAgree(json.getAsJsonArray("variants"), out.resolve("measures.csv"));
	}

	private void splitAgrees(JsonObject json, Csv split, Csv proposals) {
		assertEquals(150, split.size() + json.get("setAside").getAsInt());
		Csv raw = Csv.of(survey);
		for (int row = 0; row < split.size(); row++) {
			int line = Integer.parseInt(split.text(row, "sample")) - 1;
			assertEquals(raw.number(line, "x"), split.number(row, "x"));
			assertEquals(raw.number(line, "y"), split.number(row, "y"));
			assertEquals(raw.text(line, "floor"), split.text(row, "floor"));
			assertEquals(raw.text(line, "building"), split.text(row, "site"));
		}
		List<String> noise = new ArrayList<>();
		Map<String, String> proposed = new TreeMap<>();
		for (int row = 0; row < proposals.size(); row++) {
			proposed.put(proposals.text(row, "sample"), proposals.text(row, "cluster"));
		}
		for (int row = 0; row < split.size(); row++) {
			String cluster = split.text(row, "cluster");
			String after = split.text(row, "clusterWithProposals");
			if (cluster.equals("-1")) {
				noise.add(split.text(row, "sample"));
				String to = proposed.get(split.text(row, "sample"));
				assertEquals(to.isEmpty() ? "-1" : to, after);
			} else {
				assertEquals(cluster, after);
			}
			assertEquals(cluster.equals("-1"), split.text(row, "role").equals("noise"));
		}
		assertEquals(noise, proposals.texts("sample"));
		JsonObject figures = json.getAsJsonObject("split");
		Set<String> clusters = Set.copyOf(split.texts("cluster"));
		assertEquals(clusters.size() - (clusters.contains("-1") ? 1 : 0), figures.get("clusters").getAsInt());
		assertEquals((double) noise.size() / split.size(), figures.get("noiseShare").getAsDouble(), 1e-12);
		long made = proposed.values().stream().filter(c -> !c.isEmpty()).count();
		assertTrue(made > 0, "no fit for the test");
		assertEquals(made, json.getAsJsonObject("proposals").get("made").getAsLong());
		assertEquals(noise.size() - made, json.getAsJsonObject("proposals").get("unplaced").getAsLong());
	}

	private static void measuresAgree(JsonArray variants, Path measures) throws IOException {
		List<String> names = new ArrayList<>();
		variants.forEach(v -> names.add(v.getAsJsonObject().get("name").getAsString()));
		assertEquals(NAMES, names);
		// "how", which has commas and therefore quotation marks, is the last column
		List<String> lines = Files.readAllLines(measures);
		List<String> header = List.of(lines.get(0).split(","));
		for (int v = 0; v < NAMES.size(); v++) {
			String[] cells = lines.get(v + 1).split(",");
			assertEquals(NAMES.get(v), cells[0]);
			for (String figure : FIGURES) {
				assertEquals(variants.get(v).getAsJsonObject().get(figure).getAsDouble(),
						Double.parseDouble(cells[header.indexOf(figure)]), figure);
			}
		}
	}

	@Test
	void printsATableThatAgreesWithTheJsonItKeeps() throws IOException {
		Path out = folder.resolve("out");
		Cli done = run(out, "--test", visit);
		JsonObject json = JsonParser.parseString(Files.readString(out.resolve("run.json"))).getAsJsonObject();
		for (JsonElement each : json.getAsJsonArray("variants")) {
			JsonObject v = each.getAsJsonObject();
			String line = done.out().lines().dropWhile(l -> !l.startsWith("matching"))
					.filter(l -> l.startsWith(v.get("name").getAsString() + " ")).findFirst().orElseThrow();
			String figures = String.format(Locale.ROOT,
					"%.3f %.3f … %.3f %.3f %.3f %.3f %.3f %.3f %.1f %% %.1f %% %.1f %.3f",
					v.get("meanErrorM").getAsDouble(), v.get("meanLowM").getAsDouble(),
					v.get("meanHighM").getAsDouble(),
					v.get("medianErrorM").getAsDouble(), v.get("rmseM").getAsDouble(), v.get("p75M").getAsDouble(),
					v.get("p90M").getAsDouble(), v.get("p95M").getAsDouble(), 100 * v.get("floorHitRate").getAsDouble(),
					100 * v.get("siteHitRate").getAsDouble(), v.get("comparisonsPerQuery").getAsDouble(),
					v.get("matchTimeRatio").getAsDouble());
			assertEquals(v.get("name").getAsString() + " " + figures, line.replaceAll("\\s+", " "));
		}
		try (Stream<Path> files = Files.list(out)) {
			assertEquals(
					Set.of("run.json", "split-map.csv", "proposals.csv", "measures.csv", "choice.csv", "k-distance.svg",
							"cluster-sizes.svg", "error-distribution.svg"),
					Set.copyOf(files.map(f -> f.getFileName().toString()).toList()));
		}
		assertTrue(done.out().contains("written to " + out + ": run.json, split-map.csv"), done::toString);
	}

	@Test
	void givesTheSameForTheSameSeed() throws IOException {
		Map<String, byte[]> first = files(7, "a");
		Map<String, byte[]> second = files(7, "b");
		assertEquals(first.keySet(), second.keySet());
		for (String name : first.keySet()) {
			if (name.equals("run.json") || name.equals("measures.csv")) {
				assertEquals(withoutTimes(name, first.get(name)), withoutTimes(name, second.get(name)), name);
			} else {
				assertArrayEquals(first.get(name), second.get(name), name);
			}
		}
		assertFalse(java.util.Arrays.equals(first.get("split-map.csv"), files(8, "c").get("split-map.csv")),
				"another seed holds out other samples");
	}

	private Map<String, byte[]> files(long seed, String name) throws IOException {
		Path out = folder.resolve(name);
		run(out, "--seed", seed);
		Map<String, byte[]> files = new TreeMap<>();
		try (Stream<Path> all = Files.list(out)) {
			for (Path file : all.toList()) {
				files.put(file.getFileName().toString(), Files.readAllBytes(file));
			}
		}
		return files;
	}

	private static String withoutTimes(String name, byte[] bytes) {
		String text = new String(bytes, java.nio.charset.StandardCharsets.UTF_8);
		if (name.equals("run.json")) {
			JsonObject json = JsonParser.parseString(text).getAsJsonObject();
			json.getAsJsonArray("variants")
					.forEach(v -> assertTrue(v.getAsJsonObject().remove("matchTimeRatio").getAsDouble() > 0));
			return json.toString();
		}
		List<String> header = List.of(text.lines().findFirst().orElseThrow().split(","));
		int time = header.indexOf("matchTimeRatio");
		StringBuilder out = new StringBuilder();
		text.lines().forEach(line -> {
			String[] cells = line.split(",");
			cells[time] = "";
			out.append(String.join(",", cells)).append('\n');
		});
		return out.toString();
	}

	@Test
	void replacesTheFilesOfAnEarlierRunAndLeavesOthersAlone() throws IOException {
		Path out = Files.createDirectories(folder.resolve("deep/er/out"));
		Files.writeString(out.resolve("run.json"), "old");
		Files.writeString(out.resolve("notes.txt"), "mine");
		run(out, "--test", visit);
		assertNotEquals("old", Files.readString(out.resolve("run.json")));
		assertEquals("mine", Files.readString(out.resolve("notes.txt")));
	}

	@Test
	void refusesAnOutFolderThatIsAFileBeforeAnythingIsComputed() {
		Cli done = Cli.run("run", "--map", survey, "--out", visit).ended(ExitCode.INPUT)
				.says(visit, "there is a file of the name", "Name a folder");
		assertEquals("", done.out());
		assertFalse(done.err().contains("choosing"), done::toString);
		Cli.run("run", "--map", survey, "--out", visit.resolve("sub")).ended(ExitCode.INPUT).says(visit.resolve("sub"),
				visit);
	}

	@Test
	void quotesWhatEachMapHearsWhereMapAndTestShareNoAccessPoint() throws IOException {
		Path foreign = folder.resolve("foreign.csv");
		Files.writeString(foreign,
				"x,y,floor,building,HARBOUR-1,HARBOUR-2,HARBOUR-3\n1,2,0,Quay,-50,-60,-70\n2,2,0,Quay,-51,-62,-71\n");
		Cli.run("run", "--map", survey, "--test", foreign, "--out", folder.resolve("out")).ended(ExitCode.NOT_ENOUGH)
				.says("no access point in common", "HARBOUR-1");
	}

	@Test
	void worksWhereAllIsNoiseAndWhereNothingIs() {
		for (double epsilon : new double[] { 0.001, 1e9 }) {
			JsonObject json = run(folder.resolve("out"), "--test", visit, "--epsilon", epsilon, "--min-pts", 3,
					"--json").json();
			JsonObject split = json.getAsJsonArray("variants").get(2).getAsJsonObject();
			boolean nothing = epsilon < 1;
			assertEquals(nothing ? 0 : 1, json.getAsJsonObject("split").get("clusters").getAsInt());
			assertEquals(nothing, split.get("meanErrorM").isJsonNull(), json::toString);
			assertFalse(json.getAsJsonArray("variants").get(4).getAsJsonObject().get("meanErrorM").isJsonNull(),
					json::toString);
		}
	}
}
