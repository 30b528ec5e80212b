package org.cairnfield.report.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.testkit.SmallMaps;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.IntakeException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFilesTest {

	private static FileRun run;

	@TempDir
	Path folder;

	@BeforeAll
	static void runOnce() {
		run = run(120);
	}

	private static FileRun run(double epsilon) {
		return FileRun.measured(FileArchive.of(Runs.intake(SmallMaps.simulated(60)), Runs.intake(SmallMaps.visit(15))),
				SplitRequest.automatic(1).published(epsilon, 3), ProposalRule.USUAL, Workers.inline());
	}

	@Test
	void writesTablesAndPicturesAndSaysWhich() throws Exception {
		Path out = folder.resolve("deep/out");
		List<Path> files = RunFiles.write(out, run, Workers.inline());
		assertEquals(List.of("split-map.csv", "proposals.csv", "measures.csv", "choice.csv", "k-distance.svg",
				"cluster-sizes.svg",
				"error-distribution.svg"), files.stream().map(f -> f.getFileName().toString()).toList());
		for (Path file : files) {
			assertEquals(out, file.getParent());
			assertTrue(Files.size(file) > 0, file::toString);
		}
		assertEquals(1 + run.onMap().size(), Files.readAllLines(out.resolve("split-map.csv")).size());
		assertEquals(1 + run.tried().size(), Files.readAllLines(out.resolve("choice.csv")).size());
	}

	@Test
	void measuresCarryEveryFigure() throws Exception {
		RunFiles.write(folder, run, Workers.inline());
		List<String> lines = Files.readAllLines(folder.resolve("measures.csv"));
		assertEquals(
				"name,meanErrorM,meanLowM,meanHighM,medianErrorM,rmseM,p75M,p90M,p95M,ce50M,ce95M,floorHitRate,siteHitRate,"
						+ "comparisonsPerQuery,matchTimeRatio,how",
				lines.get(0));
		Way plain = run.measured().way("plain");
		String[] cells = lines.get(1).split(",");
		assertEquals("plain", cells[0]);
		assertEquals(plain.errors().meanMetres(), Double.parseDouble(cells[1]));
		assertEquals(plain.errors().rmseMetres(), Double.parseDouble(cells[5]));
		assertEquals(plain.errors().p95Metres(), Double.parseDouble(cells[8]));
		assertEquals(plain.comparisons(), Double.parseDouble(cells[13]));
	}

	@Test
	void picturesSayWhatTheyAreMadeOf() throws Exception {
		RunFiles.write(folder, run, Workers.inline());
		String sizes = text("cluster-sizes.svg");
		assertTrue(sizes.contains(run.onMap().size() + " samples"), sizes);
		assertTrue(sizes.contains("minPts 3"), sizes);
		String errors = text("error-distribution.svg");
		assertTrue(errors.contains("15 test samples against a map of " + run.onMap().size()), errors);
		assertTrue(text("k-distance.svg").contains("positive representation, city-block distance"));
	}

	/** The words of a picture, however they were broken into lines. */
	private String text(String picture) throws IOException {
		return Files.readString(folder.resolve(picture)).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
	}

	@Test
	void drawsWhereTheSplitFoundNoCluster() throws Exception {
		RunFiles.write(folder, run(0.001), Workers.inline());
		String errors = text("error-distribution.svg");
		assertTrue(errors.contains("no position by split, split+proposals"), errors);
		assertTrue(Files.readAllLines(folder.resolve("measures.csv")).get(3).startsWith("split,,,"));
	}

	@Test
	void saysWhatIsInTheWayOfTheFolder() throws IOException {
		Path file = Files.writeString(folder.resolve("taken"), "");
		IntakeException e = assertThrows(IntakeException.class,
				() -> RunFiles.write(file.resolve("sub"), run, Workers.inline()));
		assertEquals(file.resolve("sub"), e.file());
		assertTrue(e.what().contains("there is a file of the name " + file), e.what());
		assertFalse(e.remedy().isBlank());
	}
}
