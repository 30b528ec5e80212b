package org.cairnfield.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Progress;
import org.junit.jupiter.api.Test;

/**
 * Openly published surveys, taken in without any option. Skipped where they are absent: the property or
 * environment variable CAIRNFIELD_DATA names their folder, otherwise {@code ../shared/data} beside the project.
 * Counts are those of the files' lines and columns.
 */
class OpenSurveysTest {

	private static List<Path> files(String set, String part) throws IOException {
		Path folder = data().resolve(set);
		assumeTrue(Files.isDirectory(folder), "skipped: no open survey data at " + folder);
		try (Stream<Path> all = Files.walk(folder)) {
			return all.filter(Files::isRegularFile).filter(f -> f.getFileName().toString().contains(part)).sorted().toList();
		}
	}

	private static Path data() {
		String told = System.getProperty("CAIRNFIELD_DATA", System.getenv("CAIRNFIELD_DATA"));
		if (told != null) {
			return Path.of(told);
		}
		// tests run in the project's root or in a module's folder below it
		for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
			Path data = at.resolveSibling("shared").resolve("data");
			if (Files.isDirectory(data)) {
				return data;
			}
		}
		return Path.of("..", "shared", "data");
	}

	private static Intake read(List<Path> files) throws IntakeException {
		return SurveyIntake.read(files, IntakeOptions.GUESS, Progress.NONE);
	}

	private static Set<Integer> distinct(RadioMap map, IntUnaryOperator value) {
		Set<Integer> values = new TreeSet<>();
		for (int s = 0; s < map.size(); s++) {
			values.add(value.applyAsInt(s));
		}
		return values;
	}

	@Test
	void takesInThreeBuildings() throws IOException, IntakeException {
		Intake training = read(files("three-buildings", "Training"));
		assertEquals(21_205, training.map().size());
		assertEquals(0, training.quarantined());
		assertEquals("100", training.notHeard());
		assertEquals(List.of("1", "2", "3"), training.map().sites());
		assertEquals(Set.of(1, 2, 3, 4), distinct(training.map(), training.map()::floor));
		assertEquals(Set.of(1, 2, 3), distinct(training.map().atSite(0), training.map().atSite(0)::floor));
		assertEquals(9, training.map().devices().size());
		assertEquals(111, training.map().accessPointCount());
		assertEquals(45, training.map().x(0));
		assertEquals(17.5, training.map().y(0));
		assertEquals(-44, training.map().rssiDbm(0, 0, 1));
		Intake test = read(files("three-buildings", "Testing"));
		assertEquals(2_720, test.map().size());
		assertEquals(0, test.quarantined());
		assertEquals(List.of("1", "2", "3"), test.map().sites());
	}

	@Test
	void countsTheAccessPointsOfThreeBuildingsApart() throws IOException, IntakeException {
		Intake in = SurveyIntake.read(files("three-buildings", "Training"),
				IntakeOptions.GUESS.withAccessPointsPerSite(true), Progress.NONE);
		assertEquals(154, in.map().accessPointCount());
	}

	@Test
	void takesInGridAreas() throws IOException, IntakeException {
		Intake in = read(files("grid-areas", ".csv"));
		assertEquals(1740 + 5100 + 1920 + 5280 + 1620 + 4860, in.map().size());
		assertEquals(0, in.quarantined());
		assertEquals("-200", in.notHeard());
		assertEquals(List.of("corridor", "lecture_theatre", "office"), in.map().sites());
		assertEquals(List.of("AP1", "AP2", "AP3", "AP4", "AP5"), in.map().accessPoints());
		assertEquals(Set.of(0), distinct(in.map(), in.map()::floor));
		assertTrue(in.map().lowestRssiDbm() >= -103);
		for (FileReport report : in.reports()) {
			assertTrue(report.notes().stream().anyMatch(n -> n.contains("AP1 RTT(mm)")), report.toString());
		}
	}

	@Test
	void takesInEachGridAreaAlone() throws IOException, IntakeException {
		for (Path file : files("grid-areas", ".csv")) {
			Intake in = read(List.of(file));
			assertEquals("-200", in.notHeard(), file.toString());
			assertEquals(5, in.map().accessPointCount(), file.toString());
			assertEquals(0, in.quarantined(), file.toString());
		}
	}

	@Test
	void takesInAWalkedFloor() throws IOException, IntakeException {
		Intake in = read(files("walked-floor", ".csv"));
		assertEquals(3_400, in.map().size());
		assertEquals(3_400, in.rowsRead());
		assertEquals(0, in.quarantined());
		assertEquals("100", in.notHeard());
		assertEquals(20, in.map().accessPointCount());
		assertEquals(List.of("walked-floor"), in.map().sites());
		assertEquals(Set.of(-1), distinct(in.map(), in.map()::floor));
		assertEquals(1601130306000L, in.map().timeMillis(0));
		// two routes carry the ids of a third
		assertEquals("3400", in.sampleIds().get(3399));
		assertEquals(List.of("0103100101", "0103100102"), read(files("walked-floor", "trn03")).sampleIds().subList(0, 2));
	}

	@Test
	void takesInTwelveSurveysOfAFloor() throws IOException, IntakeException {
		Intake in = read(files("twelve-surveys", ".csv"));
		assertEquals(11_120, in.map().size());
		assertEquals(0, in.quarantined());
		assertEquals(510, in.map().accessPointCount());
		assertEquals(List.of("twelve-surveys"), in.map().sites());
		assertEquals(List.of("2019-02-19", "2019-03-25", "2019-06-11", "2019-07-03", "2019-07-29", "2019-09-11", "2019-10-09", "2019-11-13",
				"2019-12-11", "2020-01-15", "2020-02-19", "2021-04-23"),
				in.reports().stream().filter(report -> report.samples() > 0).map(FileReport::surveyName).sorted().toList());
		assertTrue(in.channels().size() > 400, () -> in.channels().size() + " channels");
	}
}
