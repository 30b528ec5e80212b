package org.cairnfield.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.BiFunction;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Layouts that surveys of many years come in: without headers, in many numbered files, with times that begin at 0. */
class OldLayoutsTest {

	private static final int ROWS = 60;
	private static final int COLUMNS = 12;

	@TempDir
	Path folder;

	private static String levels(Random random) {
		List<String> cells = new ArrayList<>();
		for (int c = 0; c < COLUMNS; c++) {
			cells.add(Integer.toString(random.nextInt(4) == 0 ? 100 : -40 - random.nextInt(50)));
		}
		return String.join(",", cells);
	}

	private static String place(int row) {
		return String.format(Locale.ROOT, "%.3f,%.3f", row % 8 * 2.13 - 7, row / 8 * 2.07 + 3.5);
	}

	private Path write(String name, BiFunction<Integer, Random, String> row, String... header) throws Exception {
		Random random = new Random(5);
		List<String> lines = new ArrayList<>(List.of(header));
		for (int r = 0; r < ROWS; r++) {
			lines.add(row.apply(r, random));
		}
		Files.createDirectories(folder.resolve(name).getParent());
		return Files.write(folder.resolve(name), lines);
	}

	private static Intake read(IntakeOptions options, Path... files) throws Exception {
		return SurveyIntake.read(List.of(files), options, Workers.inline());
	}

	private static void assertPlaced(RadioMap map) {
		assertEquals(ROWS, map.size());
		assertEquals(COLUMNS, map.accessPointCount());
		assertEquals(-7 + 3 * 2.13, map.x(11), 1e-9);
		assertEquals(2.07 + 3.5, map.y(11), 1e-9);
	}

	/** Negative coordinates with fractions look like levels but for those. */
	@Test
	void findsCoordinatesInWideTablesWithoutAHeader() throws Exception {
		assertPlaced(
				read(IntakeOptions.GUESS, write("last.csv", (r, random) -> levels(random) + ',' + place(r))).map());
		assertPlaced(
				read(IntakeOptions.GUESS, write("first.csv", (r, random) -> place(r) + ',' + levels(random))).map());
		RadioMap withFloor = read(IntakeOptions.GUESS,
				write("floor.csv", (r, random) -> levels(random) + ',' + place(r) + ',' + (2 + r / 30))).map();
		assertPlaced(withFloor);
		assertEquals(3, withFloor.floor(ROWS - 1));
		Preview preview = SurveyIntake.preview(List.of(folder.resolve("last.csv")), IntakeOptions.GUESS).get(0);
		assertTrue(preview.toText().contains("among the last columns two hold numbers with fractions: coordinates"),
				preview.toText());
	}

	/** Signals alone have no coordinates to be found. */
	@Test
	void takesNoLevelsForCoordinates() throws Exception {
		Preview preview = SurveyIntake
				.preview(List.of(write("alone.csv", (r, random) -> levels(random))), IntakeOptions.GUESS).get(0);
		assertTrue(preview.problems().get(0).contains("signals without positions"), preview.toText());
	}

	private static String headed(int row, Random random) {
		return place(row) + ",1," + levels(random);
	}

	private static String header() {
		StringBuilder header = new StringBuilder("x,y,floor");
		for (int c = 0; c < COLUMNS; c++) {
			header.append(String.format(Locale.ROOT, ",00:00:5E:00:53:%02X", c));
		}
		return header.toString();
	}

	@Test
	void putsNumberedFilesAtOneSite() throws Exception {
		Path[] files = new Path[5];
		for (int f = 0; f < files.length; f++) {
			files[f] = write("hall/walk_" + f + ".csv", OldLayoutsTest::headed, header());
		}
		assertEquals(List.of("walk"), read(IntakeOptions.GUESS, files).map().sites());
		assertEquals(List.of("Sail Loft"), read(IntakeOptions.GUESS.withUsualSite("Sail Loft"), files).map().sites(),
				"the archive's only site");
		Path other = write("hall/cellar.csv", OldLayoutsTest::headed, header());
		assertEquals(List.of("cellar", "walk"),
				read(IntakeOptions.GUESS, files[0], files[1], other).map().sites().stream().sorted().toList());
	}

	/** Seconds since the survey began need the day, which the folder tells. */
	@Test
	void readsTimesThatBeginAtNought() throws Exception {
		BiFunction<Integer, Random, String> timed = (r, random) -> String.format(Locale.ROOT, "%.1f,", r * 1.5)
				+ headed(r, random);
		RadioMap dated = read(IntakeOptions.GUESS, write("2030-02-07/walk.csv", timed, "time," + header())).map();
		assertEquals(Instant.parse("2030-02-07T00:00:15Z").toEpochMilli(), dated.timeMillis(10));
		RadioMap undated = read(IntakeOptions.GUESS, write("sometime/walk.csv", timed, "time," + header())).map();
		assertEquals(RadioMap.NO_TIME, undated.timeMillis(10));
		Preview preview = SurveyIntake.preview(List.of(folder.resolve("sometime/walk.csv")), IntakeOptions.GUESS)
				.get(0);
		assertTrue(preview.toText().contains("put it into the name of the file or its folder"), preview.toText());
	}
}
