package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SplitCommandTest {

	@TempDir
	Path folder;

	private Path survey(int samples) {
		return TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(samples));
	}

	private double[][] distances(Path survey, ToDoubleBiFunction<double[], double[]> distance) {
		double[][] levels = Naive.levels(Csv.of(survey), "building");
		return Naive.matrix(Naive.positive(levels, Naive.lowest(levels)), distance);
	}

	private static double quantile(double[][] d, double share) {
		double[] all = Arrays.stream(d).flatMapToDouble(Arrays::stream).sorted().toArray();
		return all[(int) (share * all.length)];
	}

	@ParameterizedTest
	@CsvSource({ "0.02,3", "0.035,4", "0.06,2", "0.15,6" })
	void labelsAsDbscanByTheBook(double share, int minPts) {
		Path survey = survey(160);
		double[][] d = distances(survey, Naive::cityBlock);
		double epsilon = quantile(d, share);
		Path labels = folder.resolve("labels.csv");
		JsonObject split = Cli
				.ok("split", "--map", survey, "--epsilon", epsilon, "--min-pts", minPts, "--labels", labels, "--json")
				.json().getAsJsonObject("split");
		Naive.Labels expected = Naive.dbscan(d, epsilon, minPts);
		Csv csv = Csv.of(labels);
		assertEquals(List.of("sample", "cluster", "role"), csv.header());
		assertEquals(IntStream.rangeClosed(1, 160).mapToObj(Integer::toString).toList(), csv.texts("sample"));
		assertArrayEquals(expected.cluster(), csv.texts("cluster").stream().mapToInt(Integer::parseInt).toArray());
		assertEquals(List.of(expected.role()), csv.texts("role"));
		long noise = Arrays.stream(expected.cluster()).filter(c -> c < 0).count();
		assertEquals(Arrays.stream(expected.cluster()).max().orElseThrow() + 1, split.get("clusters").getAsInt());
		assertEquals(noise / 160.0, split.get("noiseShare").getAsDouble(), 1e-12);
		assertEquals(epsilon, split.get("epsilon").getAsDouble());
		assertEquals(minPts, split.get("minPts").getAsInt());
	}

	@Test
	void aChoiceEndsInTimeOrSaysWhatItLacked() {
		Path survey = survey(160);
		Cli none = Cli.run("split", "--map", survey, "--time", "0.0005").ended(ExitCode.NOT_ENOUGH);
		assertTrue(
				none.err().contains(
						"the time is too short to choose an ε for 160 samples: give more time, or ε and minPts"),
				none::err);
		Cli wrong = Cli.run("split", "--map", survey, "--time", "0").ended(ExitCode.USAGE);
		assertTrue(wrong.err().contains("--time must be a number of seconds above 0"), wrong::err);
		Cli.ok("split", "--map", survey, "--time", "500");
	}

	@Test
	void splitsByEuclideanDistanceWhereAsked() {
		Path survey = survey(120);
		double[][] d = distances(survey, Naive::euclidean);
		double epsilon = quantile(d, 0.05) + 1e-6; // off any distance, which rounding may move
		Path labels = folder.resolve("labels.csv");
		Cli.ok("split", "--map", survey, "--epsilon", epsilon, "--min-pts", 3, "--distance", "euclidean", "--labels",
				labels);
		assertArrayEquals(Naive.dbscan(d, epsilon, 3).cluster(),
				Csv.of(labels).texts("cluster").stream().mapToInt(Integer::parseInt).toArray());
	}

	@ParameterizedTest
	@CsvSource({ "normalised", "exponential", "powed" })
	void otherRepresentationsMeasureOnAScaleOfTheirOwn(String name) {
		Path survey = survey(120);
		JsonObject split = Cli.ok("split", "--map", survey, "--representation", name, "--json").json()
				.getAsJsonObject("split");
		assertEquals(name, split.get("representation").getAsString());
		double epsilon = split.get("epsilon").getAsDouble();
		// city-block distances of values within 0 … 1, where positive values reach a hundred
		assertTrue(epsilon > 0 && epsilon < 20, split::toString);
		assertTrue(Cli.ok("split", "--map", survey, "--json").json().getAsJsonObject("split").get("epsilon")
				.getAsDouble() > 20);
	}

	/** A sample within ε = 6 of a core of either group, and of too few to be one: the nearer core, else the first. */
	@ParameterizedTest
	@CsvSource({ "-40 -42 -44 -50 -55 -57 -59, 0 0 0 1 1 1 1", "-40 -42 -44 -50 -56 -58 -60, 0 0 0 0 1 1 1",
			"-60 -58 -56 -50 -44 -42 -40, 0 0 0 0 1 1 1" })
	void aBorderSampleGoesWithTheNearestCore(String levels, String clusters) {
		String rows = Arrays.stream(levels.split(" ")).map(l -> "1,2,0,Quay," + l + ",-90\n")
				.collect(Collectors.joining());
		Path survey = TestSurveys.text(folder.resolve("survey.csv"), "x,y,floor,building,A,B\n" + rows);
		Path labels = folder.resolve("labels.csv");
		Cli.ok("split", "--map", survey, "--epsilon", 6, "--min-pts", 4, "--labels", labels);
		assertEquals(List.of(clusters.split(" ")), Csv.of(labels).texts("cluster"));
		assertEquals("border", Csv.of(labels).text(3, "role"));
	}

	@Test
	void keepsTheOrderOfTheRowsAndTheirIds() {
		var map = TestSurveys.map(60);
		Path survey = TestSurveys.wide(folder.resolve("ids.csv"), map, "TIDE");
		Path labels = folder.resolve("labels.csv");
		Cli.ok("split", "--map", survey, "--epsilon", 150, "--min-pts", 3, "--labels", labels);
		assertEquals(TestSurveys.ids("TIDE", 60), Csv.of(labels).texts("sample"));
	}

	@Test
	void numbersTheSamplesOfSeveralFilesOnwards() {
		Path first = TestSurveys.plain(folder.resolve("a.csv"), TestSurveys.map(40));
		Path second = TestSurveys.plain(folder.resolve("b.csv"), TestSurveys.visit(20));
		Path labels = folder.resolve("labels.csv");
		Cli.ok("split", "--map", first, second, "--epsilon", 150, "--min-pts", 3, "--labels", labels);
		assertEquals(IntStream.rangeClosed(1, 60).mapToObj(Integer::toString).toList(), Csv.of(labels).texts("sample"));
	}

	@Test
	void leavesOutOnlyRowsThatWereQuarantined() throws IOException {
		Path survey = survey(30);
		List<String> lines = new java.util.ArrayList<>(Files.readAllLines(survey));
		lines.set(5, lines.get(5).replaceFirst("^[^,]*", "nowhere"));
		Files.write(survey, lines);
		Path labels = folder.resolve("labels.csv");
		Cli.run("split", "--map", survey, "--epsilon", 150, "--min-pts", 3, "--labels", labels)
				.ended(ExitCode.QUARANTINED);
		assertEquals(29, Csv.of(labels).size());
	}

	@Test
	void allIsNoiseWhereEpsilonIsTiny() {
		Path labels = folder.resolve("labels.csv");
		Cli done = Cli.ok("split", "--map", survey(50), "--epsilon", 0.001, "--min-pts", 3, "--labels", labels);
		assertEquals(Set.of("-1"), Set.copyOf(Csv.of(labels).texts("cluster")));
		assertEquals(Set.of("noise"), Set.copyOf(Csv.of(labels).texts("role")));
		assertTrue(done.out().contains("0 clusters, 100.0 % noise"), done::toString);
	}

	@Test
	void nothingIsNoiseWhereEpsilonIsHuge() {
		Path labels = folder.resolve("labels.csv");
		Cli.ok("split", "--map", survey(50), "--epsilon", 1e9, "--min-pts", 3, "--labels", labels);
		assertEquals(Set.of("0"), Set.copyOf(Csv.of(labels).texts("cluster")));
		assertEquals(Set.of("core"), Set.copyOf(Csv.of(labels).texts("role")));
	}

	@Test
	void asksForNoMemoryForMoreNeighboursThanThereAre() {
		assertEquals(1.0,
				Cli.ok("split", "--map", survey(50), "--epsilon", 100, "--min-pts", 2_000_000_000, "--json").json()
						.getAsJsonObject("split").get("noiseShare").getAsDouble());
	}

	@Test
	void reducesToFewerComponentsForASmallerShare() {
		Path survey = survey(120);
		int few = components(survey, 0.5);
		int most = components(survey, 0.95);
		assertTrue(0 < few && few < most && most < 40, few + ", " + most);
	}

	private static int components(Path survey, double share) {
		JsonObject split = Cli.ok("split", "--map", survey, "--pca", share, "--json").json().getAsJsonObject("split");
		assertTrue(split.get("clusters").getAsInt() > 0, split::toString);
		return split.get("pcaComponents").getAsInt();
	}

	@Test
	void saysWhatIsMissingForPrincipalComponents() {
		Path one = TestSurveys.plain(folder.resolve("one.csv"), TestSurveys.map(4).view(new int[] { 0 }));
		Cli.run("split", "--map", one, "--pca", 0.9, "--epsilon", 1, "--min-pts", 1).ended(ExitCode.NOT_ENOUGH)
				.says("a split needs two samples at least");
	}

	@Test
	void givesTheSameBytesForTheSameSeed() throws IOException {
		Path survey = survey(150);
		byte[][] bytes = new byte[2][];
		for (int i = 0; i < 2; i++) {
			Path labels = folder.resolve("labels" + i + ".csv");
			Cli.ok("split", "--map", survey, "--seed", 7, "--labels", labels);
			bytes[i] = Files.readAllBytes(labels);
		}
		assertArrayEquals(bytes[0], bytes[1]);
		assertNotEquals(0, bytes[0].length);
	}

	@Test
	void tableAndJsonAgree() {
		Path survey = survey(100);
		JsonObject split = Cli.ok("split", "--map", survey, "--json").json().getAsJsonObject("split");
		String table = Cli.ok("split", "--map", survey).out();
		assertTrue(table.contains(String.format(java.util.Locale.ROOT, "%d clusters, %.1f %% noise (ε %.6g, minPts %d",
				split.get("clusters").getAsInt(), 100 * split.get("noiseShare").getAsDouble(),
				split.get("epsilon").getAsDouble(), split.get("minPts").getAsInt())), table);
	}
}
