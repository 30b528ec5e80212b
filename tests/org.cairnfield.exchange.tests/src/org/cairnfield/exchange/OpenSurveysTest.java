package org.cairnfield.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.testkit.OpenSets;
import org.junit.jupiter.api.Test;

/**
 * Openly published surveys, taken in without any option. Counts are those of the files' lines and columns.
 */
class OpenSurveysTest {

	private static Intake read(List<Path> files) throws IntakeException {
		return SurveyIntake.read(files, IntakeOptions.GUESS, Workers.inline());
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
		Intake training = read(OpenSets.files("three-buildings", "Training"));
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
		Intake test = read(OpenSets.files("three-buildings", "Testing"));
		assertEquals(2_720, test.map().size());
		assertEquals(0, test.quarantined());
		assertEquals(List.of("1", "2", "3"), test.map().sites());
	}

	@Test
	void countsTheAccessPointsOfThreeBuildingsApart() throws IOException, IntakeException {
		Intake in = SurveyIntake.read(OpenSets.files("three-buildings", "Training"),
				IntakeOptions.GUESS.withAccessPointsPerSite(true), Workers.inline());
		assertEquals(154, in.map().accessPointCount());
	}

	@Test
	void takesInGridAreas() throws IOException, IntakeException {
		Intake in = read(OpenSets.files("grid-areas", ".csv"));
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
		for (Path file : OpenSets.files("grid-areas", ".csv")) {
			Intake in = read(List.of(file));
			assertEquals("-200", in.notHeard(), file.toString());
			assertEquals(5, in.map().accessPointCount(), file.toString());
			assertEquals(0, in.quarantined(), file.toString());
		}
	}

	@Test
	void takesInAWalkedFloor() throws IOException, IntakeException {
		Intake in = read(OpenSets.files("walked-floor", ".csv"));
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
		assertEquals(List.of("0103100101", "0103100102"),
				read(OpenSets.files("walked-floor", "trn03")).sampleIds().subList(0, 2));
	}

	@Test
	void takesInTwelveSurveysOfAFloor() throws IOException, IntakeException {
		Intake in = read(OpenSets.files("twelve-surveys", ".csv"));
		assertEquals(11_120, in.map().size());
		assertEquals(0, in.quarantined());
		assertEquals(510, in.map().accessPointCount());
		assertEquals(List.of("twelve-surveys"), in.map().sites());
		assertEquals(
				List.of("2019-02-19", "2019-03-25", "2019-06-11", "2019-07-03", "2019-07-29", "2019-09-11",
						"2019-10-09", "2019-11-13",
						"2019-12-11", "2020-01-15", "2020-02-19", "2021-04-23"),
				in.reports().stream().filter(report -> report.samples() > 0).map(FileReport::surveyName).sorted()
						.toList());
		assertTrue(in.channels().size() > 400, () -> in.channels().size() + " channels");
	}
}
