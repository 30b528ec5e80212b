package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasureCommandTest {

	private static final int POINTS = 251;
	private static final int SCANS = 3;
	private static final int SAMPLES = POINTS * SCANS;

	@TempDir
	Path folder;

	/** Plain matching done again on dense rows read from the files, with percentiles of its own. */
	@Test
	void plainIsTheNearestNeighbourByTheBook() {
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(160));
		Path visit = TestSurveys.plain(folder.resolve("visit.csv"), TestSurveys.visit(60));
		JsonObject plain = variant(Cli.ok("measure", "--map", survey, "--test", visit, "--json").json(), "plain");
		Csv map = Csv.of(survey);
		Csv test = Csv.of(visit);
		double[][] levels = Naive.levels(map, "building");
		// cleaning takes samples that heard fewer than three access points
		int[] kept = IntStream.range(0, levels.length)
				.filter(s -> Arrays.stream(levels[s]).filter(v -> !Double.isNaN(v)).count() >= 3).toArray();
		double[][] keptLevels = Arrays.stream(kept).mapToObj(s -> levels[s]).toArray(double[][]::new);
		double lowest = Naive.lowest(keptLevels);
		double[][] values = Naive.positive(keptLevels, lowest);
		double[][] asked = Naive.positive(columnsOf(map, test), lowest);
		double[] error = new double[asked.length];
		int floors = 0;
		int sites = 0;
		for (int q = 0; q < asked.length; q++) {
			double[] query = asked[q];
			int best = IntStream.range(0, kept.length).boxed()
					.min(Comparator.comparing((Integer s) -> Naive.cityBlock(query, values[s]))
							.thenComparing(s -> map.text(kept[s], "building"))
							.thenComparing(s -> map.number(kept[s], "floor"))
							.thenComparing(s -> map.number(kept[s], "x")).thenComparing(s -> map.number(kept[s], "y")))
					.orElseThrow();
			error[q] = Math.hypot(map.number(kept[best], "x") - test.number(q, "x"),
					map.number(kept[best], "y") - test.number(q, "y"));
			floors += map.text(kept[best], "floor").equals(test.text(q, "floor")) ? 1 : 0;
			sites += map.text(kept[best], "building").equals(test.text(q, "building")) ? 1 : 0;
		}
		assertEquals(Arrays.stream(error).average().orElseThrow(), plain.get("meanErrorM").getAsDouble(), 1e-9);
		assertEquals(Math.sqrt(Arrays.stream(error).map(e -> e * e).average().orElseThrow()),
				plain.get("rmseM").getAsDouble(), 1e-9);
		assertEquals(Naive.percentile(error, 50), plain.get("medianErrorM").getAsDouble(), 1e-9);
		assertEquals(Naive.percentile(error, 75), plain.get("p75M").getAsDouble(), 1e-9);
		assertEquals(Naive.percentile(error, 90), plain.get("p90M").getAsDouble(), 1e-9);
		assertEquals(Naive.percentile(error, 95), plain.get("p95M").getAsDouble(), 1e-9);
		assertEquals((double) floors / asked.length, plain.get("floorHitRate").getAsDouble(), 1e-12);
		assertEquals((double) sites / asked.length, plain.get("siteHitRate").getAsDouble(), 1e-12);
		assertEquals(kept.length, plain.get("comparisonsPerQuery").getAsDouble(), 1e-9);
		assertEquals(1, plain.get("matchTimeRatio").getAsDouble());
	}

	/** Of equally near samples the one that comes first by site, floor, x, y, whatever the order of the rows. */
	@Test
	void tiesGoToTheFirstPlace() {
		String header = "x,y,floor,building,A,B,C\n";
		Path survey = TestSurveys.text(folder.resolve("survey.csv"),
				header + "9,0,1,Quay,-50,-60,-70\n6,0,0,Quay,-50,-60,-70\n"
						+ "2,7,0,Quay,-50,-60,-70\n2,3,0,Quay,-50,-60,-70\n1,0,0,Yard,-50,-60,-70\n");
		Path visit = TestSurveys.text(folder.resolve("visit.csv"),
				header + "2,0,0,Quay,-50,-60,-70\n2,0,0,Quay,-50,-60,-70\n");
		JsonObject plain = variant(Cli.ok("measure", "--map", survey, "--test", visit, "--json").json(), "plain");
		assertEquals(3, plain.get("meanErrorM").getAsDouble());
		assertEquals(1, plain.get("floorHitRate").getAsDouble());
		assertEquals(1, plain.get("siteHitRate").getAsDouble());
	}

	/** The test survey's levels in the map's columns. */
	private static double[][] columnsOf(Csv map, Csv test) {
		int[] columns = map.columnsAfter("building");
		return IntStream.range(0, test.size()).mapToObj(q -> Arrays.stream(columns).mapToDouble(c -> {
			int at = test.header().indexOf(map.header().get(c));
			String cell = at < 0 ? "" : test.rows().get(q).get(at);
			return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
		}).toArray()).toArray(double[][]::new);
	}

	private static JsonObject variant(JsonObject json, String name) {
		for (JsonElement v : json.getAsJsonArray("variants")) {
			if (v.getAsJsonObject().get("name").getAsString().equals(name)) {
				return v.getAsJsonObject();
			}
		}
		throw new AssertionError(name + " is missing: " + json);
	}

	@Test
	void splitsLookAtFewerFingerprints() {
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(160));
		JsonObject json = Cli.ok("measure", "--map", survey, "--json").json();
		double all = variant(json, "plain").get("comparisonsPerQuery").getAsDouble();
		assertEquals(json.get("trainingSamples").getAsInt() - json.get("setAside").getAsInt(), all, 1e-9);
		assertTrue(variant(json, "split").get("comparisonsPerQuery").getAsDouble() < all);
		assertTrue(variant(json, "split+proposals").get("comparisonsPerQuery").getAsDouble() >= variant(json, "split")
				.get("comparisonsPerQuery").getAsDouble());
		assertTrue(variant(json, "chosen").get("comparisonsPerQuery").getAsDouble() < all);
	}

	/** Three scans at every point: all are in the map, or none; and so are all points of a square block. */
	@Test
	void holdsOutWholePlaces() {
		RadioMap points = TestSurveys.map(POINTS);
		RadioMapBuilder repeated = new RadioMapBuilder();
		points.accessPoints().forEach(repeated::accessPoint);
		for (int scan = 0; scan < SCANS; scan++) {
			for (int s = 0; s < points.size(); s++) {
				repeated.sample(points.sites().get(points.site(s)), points.floor(s), points.x(s), points.y(s));
				for (int k = points.firstReading(s); k < points.endReading(s); k++) {
					repeated.reading(points.accessPoint(k), Math.max(-120, points.rssiDbm(k) - scan));
				}
			}
		}
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), repeated.build());
		Path out = folder.resolve("out");
		JsonObject json = Cli
				.ok("run", "--map", survey, "--out", out, "--epsilon", 100, "--min-pts", 3, "--seed", 3, "--json")
				.json();
		assertEquals(true, json.get("heldOut").getAsBoolean());
		assertEquals(0, json.get("setAside").getAsInt(), "no fit for the test");
		Set<Integer> kept = new HashSet<>();
		Csv.of(out.resolve("split-map.csv")).texts("sample").forEach(s -> kept.add(Integer.parseInt(s) - 1));
		assertEquals(SAMPLES - kept.size(), json.get("testSamples").getAsInt());
		for (int s = 0; s < SAMPLES; s++) {
			assertEquals(kept.contains(s % POINTS), kept.contains(s), "scans of one point on both sides");
		}
		double share = (SAMPLES - kept.size()) / (double) SAMPLES;
		assertTrue(share >= 0.2 && share < 0.3, "held out: " + share);
		int torn = torn(Csv.of(survey), kept);
		assertEquals(0, torn, "blocks on both sides");
	}

	/** Squares of the largest side from the corner of the samples, halved until there are a hundred: how many of them hold samples of both sides. */
	private static int torn(Csv survey, Set<Integer> kept) {
		double[] x = survey.texts("x").stream().mapToDouble(Double::parseDouble).toArray();
		double[] y = survey.texts("y").stream().mapToDouble(Double::parseDouble).toArray();
		double left = Arrays.stream(x).min().orElseThrow();
		double bottom = Arrays.stream(y).min().orElseThrow();
		double side = Math.max(Arrays.stream(x).max().orElseThrow() - left,
				Arrays.stream(y).max().orElseThrow() - bottom);
		Map<String, List<Integer>> blocks = Map.of();
		for (int halved = 0; halved <= 12 && blocks.size() < 100; halved++) {
			blocks = new HashMap<>();
			for (int s = 0; s < x.length; s++) {
				String block = survey.text(s, "building") + "/" + survey.text(s, "floor") + "/"
						+ (long) Math.floor((x[s] - left) / side + 1e-6) + "/"
						+ (long) Math.floor((y[s] - bottom) / side + 1e-6);
				blocks.computeIfAbsent(block, b -> new ArrayList<>()).add(s);
			}
			side /= 2;
		}
		assertTrue(blocks.size() < 0.8 * POINTS, "no fit for the test: hardly a block of several points");
		return (int) blocks.values().stream().filter(b -> b.stream().anyMatch(kept::contains) && !kept.containsAll(b))
				.count();
	}

	@Test
	void saysHowManySamplesWereSetAside() {
		RadioMap map = TestSurveys.map(100);
		RadioMapBuilder poor = new RadioMapBuilder();
		map.accessPoints().forEach(poor::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			poor.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			int end = s < 4 ? map.firstReading(s) + 2 : map.endReading(s);
			for (int k = map.firstReading(s); k < end; k++) {
				poor.reading(map.accessPoint(k), map.rssiDbm(k));
			}
		}
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), poor.build());
		Path visit = TestSurveys.plain(folder.resolve("visit.csv"), TestSurveys.visit(20));
		Cli done = Cli.ok("measure", "--map", survey, "--test", visit);
		assertTrue(done.out().contains("4 of 100 samples set aside (fewer than 3 access points heard)"),
				done::toString);
	}

	@Test
	void saysWhatIsMissingForAHoldOut() {
		Path one = TestSurveys.text(folder.resolve("one.csv"), "x,y,floor,building,A,B,C\n1,2,0,Quay,-50,-60,-70\n");
		Cli.run("measure", "--map", one).ended(ExitCode.NOT_ENOUGH).says(
				"a map needs two samples at least, and 0 of 1 can be used",
				"1 held out for testing", "test survey");
		Cli.run("measure", "--map", one, "--test", one).ended(ExitCode.NOT_ENOUGH).says("and 1 of 1 can be used");
	}

	@Test
	void notesOnTheTestSurveyAreShownToo() {
		Path survey = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(40));
		Path visit = TestSurveys.text(folder.resolve("visit.csv"),
				"x,y,floor,building," + String.join(",", TestSurveys.map(40).accessPoints().subList(0, 3))
						+ "\n1,2,0,Site S01,-50,-60,-70\n1,2,0,Site S01,,,\n");
		Cli.ok("measure", "--map", survey, "--test", visit).says("note: visit.csv: 1 samples heard no access point");
	}
}
