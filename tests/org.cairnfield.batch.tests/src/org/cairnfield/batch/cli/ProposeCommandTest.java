package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProposeCommandTest {

	private static final int SAMPLES = 150;
	private static final int MIN_PTS = 3;

	@TempDir
	Path folder;

	private Path survey() {
		return TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(SAMPLES));
	}

	private static double[][] distances(Path survey) {
		double[][] levels = Naive.levels(Csv.of(survey), "building");
		return Naive.matrix(Naive.positive(levels, Naive.lowest(levels)), Naive::cityBlock);
	}

	private Csv propose(Path survey, Object... more) {
		Path proposals = folder.resolve("proposals.csv");
		Cli.ok("propose", "--map", survey, "--min-pts", MIN_PTS, "--proposals", proposals, List.of(more));
		Csv csv = Csv.of(proposals);
		assertEquals(List.of("sample", "cluster", "strength", "margin", "carrier", "runnerUp"), csv.header());
		return csv;
	}

	@ParameterizedTest
	@ValueSource(doubles = { 110, 130, 150 })
	void correlatesEachNoiseSampleAsTheFullMatrixDoes(double epsilon) {
		Path survey = survey();
		double[][] d = distances(survey);
		int[] label = Naive.dbscan(d, epsilon, MIN_PTS).cluster();
		Csv csv = propose(survey, "--epsilon", epsilon);
		int[] noise = IntStream.range(0, SAMPLES).filter(s -> label[s] < 0).toArray();
		assertTrue(noise.length > 15 && noise.length < SAMPLES, "no fit for the test: " + noise.length);
		assertEquals(Arrays.stream(noise).mapToObj(s -> Integer.toString(s + 1)).toList(), csv.texts("sample"));
		for (int row = 0; row < noise.length; row++) {
			compare(csv, row, noise[row], label, d);
		}
	}

	/** Best r of each cluster; the best of these proposes, the next is the runner-up. */
	private static void compare(Csv csv, int row, int sample, int[] label, double[][] d) {
		Map<Integer, Double> best = new HashMap<>();
		for (int other = 0; other < label.length; other++) {
			if (label[other] >= 0) {
				best.merge(label[other], Naive.pearson(d[sample], d[other]), Math::max);
			}
		}
		List<Map.Entry<Integer, Double>> ranked = best.entrySet().stream()
				.sorted(Map.Entry.<Integer, Double>comparingByValue().reversed())
				.toList();
		double strength = csv.number(row, "strength");
		assertEquals(ranked.get(0).getValue(), strength, 1e-9);
		int carrier = Integer.parseInt(csv.text(row, "carrier")) - 1;
		assertEquals(strength, Naive.pearson(d[sample], d[carrier]), 1e-9);
		if (strength >= 0.1) {
			assertEquals(label[carrier], Integer.parseInt(csv.text(row, "cluster")));
		} else {
			assertEquals("", csv.text(row, "cluster"));
		}
		if (ranked.size() > 1) {
			double second = ranked.get(1).getValue();
			assertEquals(strength - second, csv.number(row, "margin"), 1e-9);
			assertEquals(second, best.get(Integer.parseInt(csv.text(row, "runnerUp"))), 1e-9);
		} else {
			assertEquals("", csv.text(row, "margin") + csv.text(row, "runnerUp"));
		}
	}

	@Test
	void correlatesEuclideanDistancesToo() {
		Path survey = survey();
		double[][] levels = Naive.levels(Csv.of(survey), "building");
		double[][] d = Naive.matrix(Naive.positive(levels, Naive.lowest(levels)), Naive::euclidean);
		int[] label = Naive.dbscan(d, 35.00001, MIN_PTS).cluster();
		Csv csv = propose(survey, "--epsilon", 35.00001, "--distance", "euclidean");
		int[] noise = IntStream.range(0, SAMPLES).filter(s -> label[s] < 0).toArray();
		assertTrue(noise.length > 15 && noise.length < SAMPLES, "no fit for the test: " + noise.length);
		for (int row = 0; row < csv.size(); row++) {
			compare(csv, row, noise[row], label, d);
		}
	}

	@Test
	void writesStrengthsToNineDigitsAtLeast() {
		List<String> strengths = propose(survey(), "--epsilon", 110).texts("strength");
		long fine = strengths.stream().filter(s -> s.replaceAll("[^0-9]", "").length() >= 9).count();
		assertTrue(fine > 0.9 * strengths.size(), strengths::toString);
	}

	@Test
	void proposesNothingBelowTheThreshold() {
		Path survey = survey();
		Csv all = propose(survey, "--epsilon", 110, "--threshold", -1);
		Csv some = propose(survey, "--epsilon", 110, "--threshold", 0.9);
		assertEquals(all.texts("strength"), some.texts("strength"));
		int held = 0;
		for (int row = 0; row < some.size(); row++) {
			boolean enough = some.number(row, "strength") >= 0.9;
			assertEquals(enough ? all.text(row, "cluster") : "", some.text(row, "cluster"));
			held += enough ? 0 : 1;
		}
		assertTrue(held > 0 && held < some.size(), "no fit for the test: " + held);
	}

	@Test
	void countsInJsonWhatTheFileLists() {
		Path survey = survey();
		Csv csv = propose(survey, "--epsilon", 110, "--threshold", 0.9);
		JsonObject json = Cli
				.ok("propose", "--map", survey, "--epsilon", 110, "--min-pts", MIN_PTS, "--threshold", 0.9, "--json")
				.json();
		long made = csv.texts("cluster").stream().filter(c -> !c.isEmpty()).count();
		assertEquals(made, json.getAsJsonObject("proposals").get("made").getAsLong());
		assertEquals(csv.size() - made, json.getAsJsonObject("proposals").get("unplaced").getAsLong());
		assertEquals(true, json.getAsJsonObject("proposals").get("gateReached").getAsBoolean());
		assertEquals(csv.size() / (double) SAMPLES, json.getAsJsonObject("split").get("noiseShare").getAsDouble(),
				1e-12);
		String table = Cli.ok("propose", "--map", survey, "--epsilon", 110, "--min-pts", MIN_PTS, "--threshold", 0.9)
				.out();
		assertTrue(table.contains(made + " made (r ≥ 0.9), " + (csv.size() - made) + " samples stay noise"), table);
	}

	@Test
	void listsAllNoiseUnplacedWhereTheGateIsNotReached() {
		Path survey = survey();
		double[][] d = distances(survey);
		int[] label = Naive.dbscan(d, 110, MIN_PTS).cluster();
		long noise = Arrays.stream(label).filter(l -> l < 0).count();
		Path file = folder.resolve("closed.csv");
		Cli done = Cli.ok("propose", "--map", survey, "--epsilon", 110, "--min-pts", MIN_PTS, "--gate", 0.99,
				"--proposals", file);
		assertTrue(done.out().contains("below the gate of 99.0 %; " + noise + " samples stay noise"), done::toString);
		Csv csv = Csv.of(file);
		assertEquals(noise, csv.size());
		assertTrue(csv.rows().stream().allMatch(r -> String.join("", r.subList(1, r.size())).isEmpty()), csv::toString);
	}

	@Test
	void opensTheGateAtExactlyItsShare() {
		Path survey = survey();
		int[] label = Naive.dbscan(distances(survey), 110, MIN_PTS).cluster();
		double share = Arrays.stream(label).filter(l -> l < 0).count() / (double) SAMPLES;
		assertTrue(made(survey, share) > 0);
		assertEquals(0, made(survey, Math.nextUp(share)));
	}

	private static int made(Path survey, double gate) {
		return Cli.ok("propose", "--map", survey, "--epsilon", 110, "--min-pts", MIN_PTS, "--gate", gate, "--json")
				.json()
				.getAsJsonObject("proposals").get("made").getAsInt();
	}

	@Test
	void placesNothingWhereAllIsNoise() {
		Csv csv = propose(survey(), "--epsilon", 0.001);
		assertEquals(SAMPLES, csv.size());
		assertTrue(csv.rows().stream().allMatch(r -> String.join("", r.subList(1, r.size())).isEmpty()), csv::toString);
	}

	@Test
	void writesAHeaderAloneWhereNothingIsNoise() {
		assertEquals(0, propose(survey(), "--epsilon", 1e9, "--gate", 0).size());
	}
}
