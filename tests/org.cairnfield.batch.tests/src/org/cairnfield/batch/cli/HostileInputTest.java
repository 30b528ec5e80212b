package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no survey, or not quite. {@link Cli} checks each time that no stack trace comes out. */
class HostileInputTest {

	private static final String HEADER = "x,y,floor,building,A,B,C\n";
	private static final String GOOD = "1,2,0,Tide House,-50,-60,-70\n4,2,0,Tide House,-55,-66,-71\n7,9,1,Tide House,-80,-62,-90\n";

	@TempDir
	Path folder;

	/** Nothing can be read of these, by any verb. */
	enum Unreadable {
		MISSING("there is no such file", "Check the name"), DIRECTORY("this is a folder", "Name the files in it"),
		EMPTY("the file is empty", "Leave it out"), BLANK("only blank lines", "Leave it out"),
		HEADER_ONLY("a header but no rows", "Leave it out"), BINARY("this is not text", "Export"),
		WORKBOOK("not a table of text", "CSV"), HDF5("this is an HDF5 file", "to one CSV file"),
		TRUNCATED_GZIP("ends too early", "Fetch it again"),
		DAMAGED_GZIP("the compressed file is damaged", "Fetch it again"), OPEN_QUOTE("never closed", "Close it");

		private final String[] words;

		Unreadable(String... words) {
			this.words = words;
		}

		Path make(Path folder) throws IOException {
			Path file = folder.resolve(name().toLowerCase(java.util.Locale.ROOT) + ".csv");
			byte[] noise = new byte[4000];
			new Random(1).nextBytes(noise);
			byte[] gzip = gzip((HEADER + GOOD.repeat(500)).getBytes(java.nio.charset.StandardCharsets.UTF_8));
			switch (this) {
			case MISSING -> {
				return file;
			}
			case DIRECTORY -> Files.createDirectory(file);
			case EMPTY -> Files.write(file, new byte[0]);
			case BLANK -> TestSurveys.text(file, "\n \n\n");
			case HEADER_ONLY -> TestSurveys.text(file, HEADER);
			case BINARY -> Files.write(file, noise);
			case WORKBOOK -> Files.write(file, new byte[] { 'P', 'K', 3, 4, 20, 0, 6, 0 });
			case HDF5 -> Files.write(file, new byte[] { (byte) 0x89, 'H', 'D', 'F', '\r', '\n', 0x1a, '\n', 0 });
			case TRUNCATED_GZIP -> Files.write(file, Arrays.copyOf(gzip, gzip.length - 12));
			case DAMAGED_GZIP -> {
				gzip[gzip.length - 6] ^= 1; // the check sum
				Files.write(file, gzip);
			}
			case OPEN_QUOTE -> TestSurveys.text(file, HEADER + GOOD + "1,2,0,\"Tide House,-50,-60,-70\n" + GOOD);
			}
			return file;
		}

		private static byte[] gzip(byte[] bytes) throws IOException {
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			try (OutputStream gzip = new GZIPOutputStream(out)) {
				gzip.write(bytes);
			}
			return out.toByteArray();
		}
	}

	private static List<List<Object>> verbs(Path out) {
		return List.of(List.of("intake"), List.of("split", "--epsilon", 10, "--min-pts", 2),
				List.of("propose", "--epsilon", 10, "--min-pts", 2), List.of("measure"), List.of("run", "--out", out));
	}

	@ParameterizedTest
	@EnumSource(Unreadable.class)
	void everyVerbNamesAnUnreadableFileAndARemedy(Unreadable kind) throws IOException {
		Path file = kind.make(folder);
		Path good = TestSurveys.text(folder.resolve("good.csv"), HEADER + GOOD);
		for (List<Object> verb : verbs(folder.resolve("out"))) {
			Cli done = Cli.run(verb, "--map", good, file).ended(ExitCode.INPUT).says("cairnfield: " + file)
					.says((Object[]) kind.words);
			assertTrue(done.err().strip().endsWith("."), done::toString);
		}
		Cli.run("measure", "--map", good, "--test", file).ended(ExitCode.INPUT).says(file).says((Object[]) kind.words);
	}

	@Test
	void saysOnWhichLineAQuotationMarkOpens() throws IOException {
		Cli.run("split", "--map", Unreadable.OPEN_QUOTE.make(folder)).ended(ExitCode.INPUT).says("line 5");
	}

	/** Rows that cannot be taken in, among three that can. */
	enum BadRow {
		RAGGED_SHORT("1,2,0,Tide House,-50", "has 5 fields, 7 expected"),
		RAGGED_LONG("1,2,0,Tide House,-50,-60,-70,-80,-90", "has 9 fields, 7 expected"),
		TEXT_FOR_A_LEVEL("1,2,0,Tide House,loud,-60,-70", "the level is not a number: 'loud'"),
		TEXT_FOR_X("east,2,0,Tide House,-50,-60,-70", "x is not a number: 'east'"),
		NO_Y("1,,0,Tide House,-50,-60,-70", "y is missing"),
		BEYOND_THE_EARTH("1e99,2,0,Tide House,-50,-60,-70", "x is beyond the Earth"),
		LEVEL_OUT_OF_RANGE("1,2,0,Tide House,-50,-300,-70", "level '-300' is outside -120 to 0 dBm"),
		LEVEL_ABOVE_0("1,2,0,Tide House,17,-60,-70", "level '17' is outside"),
		NO_FLOOR("1,2,,Tide House,-50,-60,-70", "the floor is missing"),
		NO_BUILDING("1,2,0,,-50,-60,-70", "the building is missing");

		private final String row;
		private final String reason;

		BadRow(String row, String reason) {
			this.row = row;
			this.reason = reason;
		}
	}

	@ParameterizedTest
	@EnumSource(BadRow.class)
	void quarantinesABadRowBesideTheSurveyWithLineAndReason(BadRow bad) throws IOException {
		Path file = TestSurveys.text(folder.resolve("survey.csv"), HEADER + GOOD.repeat(4) + bad.row + "\n" + GOOD);
		Path labels = folder.resolve("labels.csv");
		Path beside = folder.resolve("survey.csv.quarantine.csv");
		Cli.run("split", "--map", file, "--epsilon", 10, "--min-pts", 2, "--labels", labels).ended(ExitCode.QUARANTINED)
				.says(file + ": 1 row quarantined (", beside);
		assertEquals(15, Csv.of(labels).size());
		List<String> lines = Files.readAllLines(beside);
		assertEquals("line,reason,record", lines.get(0));
		assertEquals(2, lines.size(), lines::toString);
		assertTrue(lines.get(1).startsWith("14,"), lines::toString);
		assertTrue(lines.get(1).contains(bad.reason), lines::toString);
		assertTrue(lines.get(1).endsWith(bad.row) || lines.get(1).endsWith("\"" + bad.row + "\""), lines::toString);
	}

	@Test
	void everyVerbGoesOnWithoutTheBadRows() throws IOException {
		List<String> rows = new ArrayList<>(Files.readAllLines(
				TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(60))));
		rows.add(9, "not,a,survey,row");
		rows.add(30, rows.get(30).replaceFirst("^[^,]+", "east"));
		Path file = Files.write(folder.resolve("survey.csv"), rows);
		for (List<Object> verb : verbs(folder.resolve("out"))) {
			Cli.run(verb, "--map", file, "--json").ended(ExitCode.QUARANTINED)
					.says("2 rows quarantined (1 wrong number of fields, 1 no position)").json();
		}
		assertEquals(List.of("10", "31"),
				Files.readAllLines(folder.resolve("survey.csv.quarantine.csv")).stream().skip(1)
						.map(l -> l.split(",")[0]).toList());
	}

	@Test
	void saysThatNoRowIsLeft() {
		Path file = TestSurveys.text(folder.resolve("survey.csv"),
				HEADER + "1e99,2,0,Tide House,-50,-60,-70\n1e99,2,0,Tide House,-50,-60,-70\n");
		Cli.run("split", "--map", file).ended(ExitCode.NOT_ENOUGH).says("no row could be taken in of " + file,
				"2 rows quarantined", "intake");
	}

	@Test
	void makesTheQuarantineFolderAndKeepsFilesOfOneNameApart() throws IOException {
		List<Path> files = new ArrayList<>();
		for (String place : List.of("a", "b")) {
			Path in = Files.createDirectory(folder.resolve(place));
			files.add(TestSurveys.text(in.resolve("survey.csv"),
					HEADER + GOOD + "east of " + place + ",2,0,Tide House,-50,-60,-70\n"));
		}
		Path quarantine = folder.resolve("set/aside");
		Cli.run("intake", "--map", files, "--quarantine", quarantine).ended(ExitCode.QUARANTINED);
		assertTrue(Files.readString(quarantine.resolve("survey.csv.quarantine.csv")).contains("east of a"));
		assertTrue(Files.readString(quarantine.resolve("2/survey.csv.quarantine.csv")).contains("east of b"));
		assertFalse(Files.exists(folder.resolve("a/survey.csv.quarantine.csv")));
	}

	@Test
	void quarantinesNothingWhereOnlyLooking() throws IOException {
		Path file = TestSurveys.text(folder.resolve("survey.csv"), HEADER + GOOD + "east,2,0,Tide House,-50,-60,-70\n");
		Cli.ok("intake", "--preview", "--map", file);
		try (Stream<Path> all = Files.list(folder)) {
			assertEquals(1, all.count());
		}
	}

	@Test
	void oneColumnIsNoSurvey() {
		Path file = TestSurveys.text(folder.resolve("one.csv"), "level\n-50\n-60\n-70\n");
		for (List<Object> verb : verbs(folder.resolve("out"))) {
			Cli.run(verb, "--map", file).ended(ExitCode.INPUT).says(file);
		}
	}

	@Test
	void levelsWithoutAPositionAreNoSurvey() {
		Path file = TestSurveys.text(folder.resolve("levels.csv"), "A,B,C\n-50,-60,-70\n-51,-61,-71\n");
		Cli.run("split", "--map", file).ended(ExitCode.INPUT).says(file, "no columns for x and y", "'A', 'B', 'C'",
				"which columns hold x and y", "--column NAME=ROLE", "--mapping FILE");
	}

	@Test
	void takesTheStrongerOfTwoColumnsOfOneAccessPoint() {
		Path file = TestSurveys.text(folder.resolve("twice.csv"),
				"x,y,floor,building,A,B,A\n1,2,0,Quay,-50,-60,-40\n2,2,0,Quay,-50,-60,-70\n");
		Path wide = folder.resolve("wide.csv");
		Cli.ok("intake", "--map", file, "--wide", wide);
		assertEquals(List.of("-40", "-50"), Csv.of(wide).texts("A"));
	}

	@ParameterizedTest
	@CsvSource({ "x,2", "y,3", "floor,4", "building,5" })
	void asksWhichOfTwoColumnsOfOneNameIsMeant(String name, int second) {
		List<String> header = new ArrayList<>(List.of("x", "y", "floor", "building", "A", "B"));
		header.add(second - 1, name);
		Path file = TestSurveys.text(folder.resolve("twice.csv"),
				String.join(",", header) + "\n" + "1,-2,-3,-4,-5,-50,-60\n".repeat(4));
		Cli.run("intake", "--map", file).ended(ExitCode.INPUT).says(file,
				"columns " + (second - 1) + " and " + second + " are both named '" + name + "'",
				"--column #" + second + "=ignored");
		Cli.ok("intake", "-q", "--map", file, "--column", "#" + second + "=ignored");
	}

	@ParameterizedTest
	@ValueSource(strings = { "NaN", "nan", "?", "N/A", "#N/A", "null", "none", "-", "--", "unknown" })
	void takesNoFloorForALevelOfItsOwn(String none) throws IOException {
		Path file = TestSurveys.text(folder.resolve("survey.csv"),
				HEADER + GOOD.repeat(3) + "5,5," + none + ",Tide House,-50,-60,-70\n");
		Path wide = folder.resolve("wide.csv");
		Cli.run("intake", "-q", "--map", file, "--wide", wide).ended(ExitCode.QUARANTINED).says("1 no floor");
		assertTrue(Files.readString(folder.resolve("survey.csv.quarantine.csv"))
				.contains("this cannot be a floor: '" + none + "'"));
		assertTrue(Csv.of(wide).texts("floor").stream().allMatch(level -> level.equals("0") || level.equals("1")));
	}

	@Test
	void refusesANameOfAnAccessPointThatNothingCanKeep() {
		Path file = TestSurveys.text(folder.resolve("long.csv"),
				"x,y,floor,building," + "A".repeat(5000) + ",B\n1,2,0,Quay,-50,-60\n2,2,0,Quay,-50,-61\n");
		for (List<Object> more : List.<List<Object>>of(List.of(), List.of("--wide", folder.resolve("w.csv")),
				List.of("--archive", folder.resolve("a")))) {
			Cli.run("intake", "-q", "--map", file, more).ended(ExitCode.INPUT).says("column 5", "5,000 characters",
					"#5=ignored");
		}
		Cli.ok("intake", "-q", "--map", file, "--column", "#5=ignored", "--wide", folder.resolve("w.csv"));
	}

	@Test
	void quotesNamesWithCommasQuotesAndLineEnds() throws IOException {
		Path file = TestSurveys.text(folder.resolve("names.csv"),
				"x,y,floor,building,\"hall, east \"\"A\"\"\",\",,,\",\"two\nlines\"\n"
						+ "1,2,0,Quay,-50,-60,-70\n2,2,0,Quay,-51,-61,-71\n");
		Path wide = folder.resolve("wide.csv");
		Cli.ok("intake", "-q", "--map", file, "--wide", wide);
		assertTrue(Files.readString(wide)
				.startsWith("id,time,device,building,floor,x,y,\"hall, east \"\"A\"\"\",\",,,\",\"two\nlines\"\r\n"));
		Path again = folder.resolve("again.csv");
		Cli.ok("intake", "-q", "--map", wide, "--wide", again);
		assertEquals(Files.readString(wide), Files.readString(again));
	}

	@Test
	void keepsAnAccessPointThatIsNamedLikeAFormulaHarmless() {
		Path file = TestSurveys.text(folder.resolve("formula.csv"),
				"x,y,floor,building,=1+1,B\n1,2,0,=Quay(),-50,-60\n2,2,0,=Quay(),-52,-61\n");
		Path wide = folder.resolve("wide.csv");
		Cli.ok("intake", "--map", file, "--wide", wide);
		Csv csv = Csv.of(wide);
		assertTrue(csv.header().contains("'=1+1"), csv::toString);
		assertEquals("'=Quay()", csv.text(0, "building"));
	}

	@Test
	void namesAResultFileThatCannotBeWritten() throws IOException {
		Path file = TestSurveys.text(folder.resolve("survey.csv"), HEADER + GOOD);
		Path nowhere = folder.resolve("no/such/folder/out.csv");
		Path taken = Files.createDirectory(folder.resolve("taken.csv"));
		for (Path target : List.of(nowhere, taken)) {
			String why = target.equals(nowhere) ? "there is no such folder" : "could not be written";
			for (List<Object> verb : List.<List<Object>>of(List.of("split", "--labels"),
					List.of("propose", "--proposals"),
					List.of("intake", "--wide"), List.of("intake", "--keep-mapping"))) {
				Cli.run(verb, target, "--map", file).ended(ExitCode.INPUT).says("cairnfield: " + target, why,
						"Name another folder");
			}
		}
		try (Stream<Path> left = Files.list(taken)) {
			assertEquals(0, left.count(), "nothing half written");
		}
	}

	@Test
	void namesAFolderThatMayNotBeWrittenTo() throws IOException {
		assumeFalse("root".equals(System.getProperty("user.name")), "skipped: root may write anywhere");
		Path locked = Files.createDirectory(folder.resolve("locked"));
		assumeTrue(locked.toFile().setWritable(false), "skipped: no permissions here");
		Path file = TestSurveys.text(folder.resolve("survey.csv"), HEADER + GOOD);
		try {
			Cli.run("run", "--map", file, "--out", locked.resolve("out")).ended(ExitCode.INPUT)
					.says(locked.resolve("out"), "not permitted");
			Cli.run("split", "--map", file, "--labels", locked.resolve("l.csv")).ended(ExitCode.INPUT)
					.says("may not be written to");
		} finally {
			locked.toFile().setWritable(true);
		}
	}
}
