package org.cairnfield.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.stats.Summary;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.Mapping;
import org.cairnfield.exchange.pack.PackReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SplitJobTest {

	private static final double EPSILON = 55;

	@TempDir
	Path folder;

	private final RadioMap survey = RandomMap.of(7, CampusSize.of(3, 1, 24).apart(), 240, Workers.inline());

	/** A file a site, as surveyors hand them in. */
	private Path surveys() throws Exception {
		Path surveys = Files.createDirectory(folder.resolve("surveys"));
		for (int site = 0; site < survey.sites().size(); site++) {
			List<String> lines = new ArrayList<>(
					List.of("id,building,floor,x,y," + String.join(",", survey.accessPoints())));
			for (int s = 0; s < survey.size(); s++) {
				if (survey.site(s) == site) {
					lines.add(String.format("s%03d,", s) + survey.sites().get(site) + "," + survey.floor(s) + ","
							+ survey.x(s) + "," + survey.y(s) + levels(s));
				}
			}
			Files.write(surveys.resolve("survey-" + site + ".csv"), lines);
		}
		return surveys;
	}

	private String levels(int sample) {
		StringBuilder row = new StringBuilder();
		for (int a = 0; a < survey.accessPointCount(); a++) {
			int level = survey.rssiDbm(sample, a, 1);
			row.append(',').append(level > 0 ? "" : Integer.toString(level));
		}
		return row.toString();
	}

	private static SplitJob.Request request(List<String> map, boolean packs) {
		return new SplitJob.Request(map, List.of(), Mapping.format(IntakeOptions.GUESS), EPSILON, 3, Search.PUBLISHED,
				new ProposalRule(0, 0.1), 1,
				Integer.MAX_VALUE, packs);
	}

	private SplitJob.Result run(List<String> map, Path out, boolean packs) throws JobException {
		return new SplitJob(LocalSpark.session(), request(map, packs), step -> {
		}).run(out + "/packs");
	}

	/** The samples that make the map, or those held out. */
	private RadioMap part(boolean heldOut) {
		boolean[] out = PositionBlocks.of(survey).holdOut(0.2, 1);
		return survey.where(s -> out[s] == heldOut && (heldOut || survey.heard(s) >= 3));
	}

	@Test
	void filesAndTheirParquetHaveTheSplitAndFiguresOfOneMachine() throws Exception {
		String files = surveys() + "/*.csv";
		SplitJob.Result result = run(List.of(files), folder.resolve("a"), true);
		RadioMap map = part(false);
		Signals signals = Signals.of(map);
		SparkDbscanTest.assertSame(Dbscan.cluster(signals, EPSILON, 3, Workers.inline()), result.split(), "from files");
		Matcher plain = new PlainMatcher(new Neighbours(signals), Voting.NEAREST);
		Matcher split = new SplitMatcher(
				SplitMap.of(signals, new Clustering(result.withProposals(), null), Centroids.Kind.MEAN, false), 1, 1,
				false,
				Voting.NEAREST);
		assertEquals(mean(plain), figure(result, "plain", null).errors().meanMetres());
		assertEquals(mean(split), figure(result, "split+proposals", null).errors().meanMetres());
		assertEquals(part(true).size(),
				survey.sites().stream().mapToInt(site -> figure(result, "plain", site).tests()).sum());

		new ResultFiles(LocalSpark.session(), result, new ProposalRule(0, 0.1), folder.resolve("a").toString()).write();
		Path table = folder.resolve("samples.parquet");
		SurveyTables.write(LocalSpark.session(), result.surveys(), table.toString());
		assertTrue(Files.isDirectory(table.resolve("site=" + survey.sites().get(0))));
		SplitJob.Result again = run(List.of(table.toString()), folder.resolve("b"), false);
		new ResultFiles(LocalSpark.session(), again, new ProposalRule(0, 0.1), folder.resolve("b").toString()).write();
		for (String name : List.of("split-map.csv", "proposals.csv", "measures.csv", "measures-by-site.csv")) {
			assertEquals(Files.readString(folder.resolve("a").resolve(name)),
					Files.readString(folder.resolve("b").resolve(name)), name);
		}
		assertEquals(map.size(),
				LocalSpark.session().read().parquet(folder.resolve("a/split-map.parquet").toString()).count());
		assertEquals(map.size() + 1, Files.readAllLines(folder.resolve("a/split-map.csv")).size());
		packsHoldTheirSites(result, map);
	}

	private double mean(Matcher matcher) {
		RadioMap tests = part(true);
		Estimates found = Estimates.of(matcher, matcher.signals().align(tests), Workers.inline());
		return Summary
				.of(IntStream.range(0, tests.size())
						.mapToDouble(q -> Math.hypot(found.x(q) - tests.x(q), found.y(q) - tests.y(q))).toArray())
				.mean();
	}

	private static Figures figure(SplitJob.Result result, String way, String site) {
		return result.figures().stream().filter(f -> f.way().equals(way) && Objects.equals(f.site(), site)).findFirst()
				.orElseThrow();
	}

	private void packsHoldTheirSites(SplitJob.Result result, RadioMap map) throws Exception {
		assertEquals(3, result.packs().size());
		for (Packs.Written pack : result.packs()) {
			PackReader reader = new PackReader(Files.readAllBytes(Path.of(pack.file())));
			assertEquals(List.of(pack.site()), List.of(reader.sites()));
		}
		try (Stream<Path> files = Files.list(folder.resolve("a/packs"))) {
			Set<String> names = new TreeSet<>(
					files.map(f -> f.getFileName().toString()).filter(n -> !n.endsWith(".crc")).toList());
			assertEquals(3, names.size(), names::toString);
		}
	}

	@Test
	void aRowThatCannotBeTakenInIsQuarantinedAndTheRestGoesOn() throws Exception {
		Path surveys = surveys();
		Path file = surveys.resolve("survey-1.csv");
		List<String> lines = new ArrayList<>(Files.readAllLines(file));
		String[] cells = lines.get(4).split(",", -1);
		cells[3] = "east";
		lines.set(4, String.join(",", cells));
		Files.write(file, lines);
		SplitJob.Result result = run(List.of(surveys.toString()), folder, false);
		assertEquals(1, result.quarantined());
		new ResultFiles(LocalSpark.session(), result, new ProposalRule(0, 0.1), folder.resolve("out").toString())
				.write();
		assertEquals("survey-1.csv 5",
				LocalSpark.session().read().parquet(folder.resolve("out/quarantine.parquet").toString())
						.select("survey", "line").javaRDD().map(r -> r.getString(0) + " " + r.getLong(1)).collect()
						.get(0));
	}

	@Test
	void aFileThatIsNoSurveyIsNamedWithItsRemedy() throws Exception {
		Path surveys = surveys();
		Files.writeString(surveys.resolve("notes.csv"), "who,what\nAda,swept\nBea,dusted\n");
		JobException e = assertThrows(JobException.class, () -> run(List.of(surveys.toString()), folder, false));
		assertEquals(JobException.INPUT, e.exitCode());
		assertTrue(e.getMessage().contains("notes.csv"), e::getMessage);
		JobException none = assertThrows(JobException.class,
				() -> run(List.of(folder + "/nowhere/*.csv"), folder, false));
		assertTrue(none.getMessage().contains("nowhere"), none::getMessage);
	}

	@Test
	void aTableWithoutPositionsSaysWhichColumnIsMissing() throws Exception {
		Path table = folder.resolve("odd.parquet");
		LocalSpark.session().range(3).toDF("site").write().parquet(table.toString());
		JobException e = assertThrows(JobException.class, () -> run(List.of(table.toString()), folder, false));
		assertTrue(e.getMessage().contains("'floor'"), e::getMessage);
	}

	@Test
	void helpSaysHowToSubmitAndAWrongOptionIsRefused() {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		assertEquals(0, SparkCommand.run(new String[] { "--help" }, new PrintStream(out), new PrintStream(err)));
		assertTrue(out.toString(StandardCharsets.UTF_8).contains("spark-submit"), out::toString);
		assertEquals(JobException.USAGE, SparkCommand.run(new String[] { "--map", "a.csv", "--out", "b" },
				new PrintStream(out), new PrintStream(err)));
		assertTrue(err.toString(StandardCharsets.UTF_8).contains("--epsilon"), err::toString);
		assertEquals(JobException.USAGE,
				SparkCommand.run(
						new String[] { "--map", "a.csv", "--out", "b", "--epsilon", "9", "--search", "wherever" },
						new PrintStream(out), new PrintStream(err)));
	}
}
