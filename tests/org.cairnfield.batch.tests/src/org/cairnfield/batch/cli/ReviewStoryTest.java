package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.model.Split;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reviewer's work without a workbench: split, propose, decide in a table, measure. */
class ReviewStoryTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void takeIn() {
		archive = folder.resolve("quay");
		Cli.ok("intake", "-q", "--map", TestSurveys.plain(folder.resolve("spring.csv"), TestSurveys.map(500)),
				"--archive", archive);
		Cli.ok("intake", "-q", "--map", TestSurveys.plain(folder.resolve("visit.csv"), TestSurveys.visit(120)),
				"--archive", archive,
				"--test-survey");
	}

	private JsonObject split() {
		return Cli.ok("split", "--json", "-q", "--archive", archive, "--name", "whole", "--epsilon", 90, "--min-pts", 4)
				.json()
				.getAsJsonArray("splits").get(0).getAsJsonObject();
	}

	private JsonObject propose() {
		return Cli.ok("propose", "--json", "-q", "--archive", archive, "--proposals", folder.resolve("evidence.csv"))
				.json();
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	private Path export() {
		Path table = folder.resolve("verdicts.csv");
		Cli.ok("verdicts", "-q", "--archive", archive, "--export", table);
		return table;
	}

	/** Decides on rows of the table: every third is rejected, the others approved; unplaced ones are left. */
	private static int decide(Path table) throws IOException {
		List<String> lines = new ArrayList<>(Files.readAllLines(table));
		List<String> columns = List.of(lines.get(0).split(","));
		int decided = 0;
		for (int i = 1; i < lines.size(); i++) {
			String[] cells = lines.get(i).split(",", -1);
			if (cells[columns.indexOf("made")].equals("yes")) {
				cells[columns.indexOf("decision")] = i % 3 == 0 ? "reject" : "approve";
				cells[columns.indexOf("reason")] = i % 3 == 0 ? "far" : "fits";
				decided++;
			}
			lines.set(i, String.join(",", cells));
		}
		Files.write(table, lines);
		return decided;
	}

	@Test
	void splitsAnArchiveAsItsFilesWouldBe() {
		JsonObject kept = split();
		JsonObject files = Cli
				.ok("split", "--json", "-q", "--map", folder.resolve("spring.csv"), "--epsilon", 90, "--min-pts", 4)
				.json()
				.getAsJsonObject("split");
		assertEquals(files.get("clusters"), kept.get("clusters"));
		assertEquals(files.get("noiseShare"), kept.get("noiseShare"));
		assertEquals(3, savePoints());
		Cli.run("split", "-q", "--archive", archive, "--name", "whole", "--epsilon", 80, "--min-pts", 4)
				.ended(ExitCode.ARCHIVE)
				.says("already", "--name");
		Cli.run("split", "-q", "--archive", archive).ended(ExitCode.USAGE).says("--name");
		Cli.run("split", "-q", "--archive", archive, "--name", "x", "--scope", "hall").ended(ExitCode.USAGE)
				.says("site/ID/LEVEL");
		Cli.run("split", "-q", "--archive", archive, "--name", "x", "--scope", "site/hall").ended(ExitCode.NOT_ENOUGH)
				.says("no site 'hall'");
	}

	@Test
	void proposesAndMeasuresWithTheFiguresOfTheServices() throws Exception {
		split();
		JsonObject proposed = propose();
		JsonObject files = Cli
				.ok("propose", "--json", "-q", "--map", folder.resolve("spring.csv"), "--epsilon", 90, "--min-pts", 4)
				.json()
				.getAsJsonObject("proposals");
		assertEquals(files.get("made"), proposed.get("made"));
		assertEquals(files.get("unplaced"), proposed.get("unplaced"));
		int made = proposed.get("made").getAsInt();
		Csv evidence = Csv.of(folder.resolve("evidence.csv"));
		assertEquals(made, java.util.stream.IntStream.range(0, evidence.size())
				.filter(row -> evidence.text(row, "made").equals("yes")).count());
		Path table = export();
		assertEquals(made, decide(table));
		JsonObject taken = Cli
				.ok("verdicts", "--json", "-q", "--archive", archive, "--import", table, "--person", "M.Q.").json();
		assertEquals(made, taken.get("taken").getAsInt());
		assertEquals(0, taken.get("open").getAsInt());
		assertEquals(5, savePoints());
		JsonObject measured = Cli.ok("measure", "--json", "-q", "--archive", archive).json();
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			Split kept = open.archive().getSplits().get(0);
			ReleasedMap released = ReleasedMap.within(open.archive(), kept, ReviewPolicy.USUAL);
			Measures service = Measures.of(released,
					ArchiveMap.of(open.archive(), kept.getScope(), SurveyKind.TEST).map(), PackRequest.USUAL,
					Workers.inline());
			assertEquals(List.of("plain", "plain-3w", "split", "split+approved", "released"),
					service.ways().stream().map(Way::name).toList());
			for (int i = 0; i < service.ways().size(); i++) {
				JsonObject variant = measured.getAsJsonArray("variants").get(i).getAsJsonObject();
				assertEquals(service.ways().get(i).name(), variant.get("name").getAsString());
				assertEquals(service.ways().get(i).errors().meanMetres(), variant.get("meanErrorM").getAsDouble());
				assertEquals(service.ways().get(i).ratioInterval().high(), variant.get("toPlainHigh").getAsDouble());
				assertEquals(service.ways().get(i).errors().floorHitRate(), variant.get("floorHitRate").getAsDouble());
			}
			assertEquals(taken.get("approved").getAsInt(), released.joined());
		}
		assertTrue(Cli.ok("measure", "-q", "--archive", archive).out().contains("split+approved"));
	}

	@Test
	void sendsSamplesHomeByATableAndSaysWhatARejectionDoes() throws IOException {
		split();
		propose();
		Path table = export();
		List<String> lines = new ArrayList<>(Files.readAllLines(table));
		List<String> columns = List.of(lines.get(0).split(","));
		List<String> rows = new ArrayList<>();
		String[] decisions = { "move", "pool", "faulty", "reject", "approve" };
		for (String line : lines.subList(1, lines.size())) {
			String[] cells = line.split(",", -1);
			if (rows.size() < decisions.length && cells[columns.indexOf("made")].equals("yes")) {
				String decision = decisions[rows.size()];
				cells[columns.indexOf("decision")] = decision;
				cells[columns.indexOf("reason")] = "far";
				cells[columns.indexOf("home")] = decision.equals("move")
						? cells[columns.indexOf("cluster")].equals("0") ? "1" : "0"
						: "";
				rows.add(String.join(",", cells));
			}
		}
		rows.add(0, lines.get(0));
		Files.write(table, rows);
		Cli taken = Cli.ok("verdicts", "--json", "--archive", archive, "--import", table, "--person", "M.Q.");
		JsonObject json = taken.json();
		assertEquals(5, json.get("taken").getAsInt());
		assertEquals(1, json.get("rejected").getAsInt());
		for (String state : List.of("moved", "pooled", "setAside", "rejected", "approved")) {
			assertEquals(1, json.get(state).getAsInt(), state);
		}
		assertTrue(taken.err().contains("1 row with reject: its sample leaves the map. Write pool"), taken.err());
		Csv out = Csv.of(export());
		for (int row = 0; row < out.size(); row++) {
			assertEquals(out.text(row, "decision").equals("move"), !out.text(row, "home").isEmpty());
		}
		assertTrue(Cli.run("gate", "-q", "--archive", archive, "--split", "whole").out().contains("1 pooled"));
	}

	@Test
	void takesNothingInWhereARowIsWrong() throws IOException {
		split();
		propose();
		Path table = export();
		decide(table);
		Files.writeString(table, Files.readString(table).replaceFirst(",approve,", ",perhaps,"));
		Cli.run("verdicts", "-q", "--archive", archive, "--import", table).ended(ExitCode.INPUT).says(
				"verdicts.csv, line ",
				"'perhaps' is not a decision", "nothing was taken in");
		assertEquals(4, savePoints());
	}

	@Test
	void carriesVerdictsToASplitMadeAnew() throws IOException {
		split();
		propose();
		Path table = export();
		int decided = decide(table);
		Cli.ok("verdicts", "-q", "--archive", archive, "--import", table, "--person", "M.Q.");
		Cli.ok("split", "-q", "--archive", archive, "--name", "again", "--epsilon", 90, "--min-pts", 4);
		Cli.ok("propose", "-q", "--archive", archive, "--split", "again");
		Cli.run("verdicts", "-q", "--archive", archive).ended(ExitCode.ARCHIVE).says("--split", "again", "whole");
		JsonObject carried = Cli
				.ok("verdicts", "--json", "-q", "--archive", archive, "--split", "again", "--carry-from", "whole")
				.json();
		assertEquals(decided, carried.get("carried").getAsInt());
		assertEquals(0, carried.getAsJsonArray("left").size());
		assertEquals(0, carried.get("open").getAsInt());
	}

	@Test
	void splitsFloorByFloor() {
		JsonObject all = Cli
				.ok("split", "--json", "-q", "--archive", archive, "--name", "floors", "--per-floor", "--epsilon", 90,
						"--min-pts", 4, "--labels", folder.resolve("labels.csv"))
				.json();
		assertTrue(all.getAsJsonArray("splits").size() > 1);
		assertEquals(500, Csv.of(folder.resolve("labels.csv")).size());
	}

	@Test
	void saysWhatIsMissingForAMeasurement() {
		Path bare = folder.resolve("bare");
		Cli.ok("intake", "-q", "--map", folder.resolve("spring.csv"), "--archive", bare);
		Cli.run("measure", "-q", "--archive", bare).ended(ExitCode.NOT_ENOUGH).says("no test survey");
		Cli.run("measure", "-q", "--archive", bare, "--split", "x").ended(ExitCode.ARCHIVE).says("no split 'x'",
				"split --archive");
		Cli.ok("split", "-q", "--archive", bare, "--name", "whole", "--epsilon", 90, "--min-pts", 4);
		Cli.run("measure", "-q", "--archive", bare).ended(ExitCode.NOT_ENOUGH).says("no test survey");
	}
}
