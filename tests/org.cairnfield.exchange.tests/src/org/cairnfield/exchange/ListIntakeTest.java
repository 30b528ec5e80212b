package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.notes;
import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.radio.WifiChannel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scans that list what they heard. */
class ListIntakeTest {

	private static final String LEVELS = "lamp:-61,stair:-70\nlamp:-63\nstair:-71,crane:-80,lamp:-60\n";

	@TempDir
	Path temp;
	private Path first;
	private Path second;

	@BeforeEach
	void makeFolders() throws IOException {
		first = Files.createDirectories(temp.resolve("Lantern Store").resolve("2024-03-01"));
		second = Files.createDirectories(temp.resolve("Lantern Store").resolve("2024-09-01"));
	}

	private static Path[] survey(Path folder, String levels) {
		return new Path[] { file(folder, "rssis.csv", levels),
				file(folder, "coordinates.csv", "1.5,2,1.00\n3,4,1.00\n5,6,1.00\n"),
				file(folder, "timestamps.csv", "20240301100000250\n20240301100001250\n20240301100002250\n"),
				file(folder, "channels.csv", "lamp:6,stair:36\nlamp:6\nstair:40,crane:11,lamp:1,stair:40\n") };
	}

	@Test
	void joinsListsCoordinatesTimesAndChannelsOfOneFolder() throws IntakeException {
		Intake in = read(survey(first, LEVELS));
		assertEquals(3, in.map().size());
		assertEquals(0, in.quarantined());
		assertEquals("Lantern Store 1 (1.5, 2.0) lamp:-61 stair:-70", sample(in.map(), 0));
		assertEquals("Lantern Store 1 (5.0, 6.0) lamp:-60 stair:-71 crane:-80", sample(in.map(), 2));
		assertEquals(1709287200250L, in.map().timeMillis(0)); // 2024-03-01T10:00:00.250Z
		assertEquals(List.of("signals", "coordinates", "times", "channels"),
				in.reports().stream().map(FileReport::part).toList());
		assertEquals(Map.of("lamp", new WifiChannel(WifiBand.GHZ_2_4, 6), "stair", new WifiChannel(WifiBand.GHZ_5, 40),
				"crane",
				new WifiChannel(WifiBand.GHZ_2_4, 11)), in.channels());
	}

	@Test
	void takesSurveysOfManyFoldersAtOnce() throws IntakeException {
		Path[] a = survey(first, LEVELS);
		Path[] b = survey(second, "crane:-50\ncrane:-51\ncrane:-52\n");
		Intake in = read(a[0], b[0], a[1], b[1], a[2], b[2], b[3], a[3]);
		assertEquals(6, in.map().size());
		assertEquals("Lantern Store 1 (1.5, 2.0) crane:-50", sample(in.map(), 3));
		assertEquals("2024-03-01", in.reports().get(0).surveyName());
		assertEquals("2024-09-01", in.reports().get(1).surveyName());
	}

	@Test
	void readsNamesWithColons() throws IntakeException {
		Intake in = read(survey(first,
				"02:4a:9f:00:00:10:-61,02:4a:9f:00:00:11:-70\n02:4a:9f:00:00:11:-72\n02:4a:9f:00:00:10:-66\n"));
		assertEquals(List.of("02:4a:9f:00:00:10", "02:4a:9f:00:00:11"), in.map().accessPoints());
		assertEquals(-72, in.map().rssiDbm(in.map().firstReading(1)));
	}

	@Test
	void takesTheStrongestLevelWhereARowNamesAnAccessPointTwice() throws IntakeException {
		Intake in = read(survey(first, "lamp:-61,lamp:-55,lamp:-70\nlamp:-63\nlamp:-60\n"));
		assertEquals("Lantern Store 1 (1.5, 2.0) lamp:-55", sample(in.map(), 0));
		assertTrue(notes(in, "2 readings name an access point that their row has already"));
	}

	@Test
	void quarantinesRowsThatAreNoLists() throws IntakeException {
		StringBuilder levels = new StringBuilder();
		StringBuilder coordinates = new StringBuilder();
		for (int i = 0; i < 30; i++) {
			levels.append(i == 7 ? "lamp:-61,stair\n"
					: i == 9 ? "lamp:-300\n" : i == 11 ? "lamp:loud\n" : "lamp:-61,stair:-70\n");
			coordinates.append(i).append(",2\n");
		}
		Intake in = read(file(first, "rssis.csv", levels.toString()),
				file(first, "coordinates.csv", coordinates.toString()));
		assertEquals(27, in.map().size());
		List<QuarantinedRow> bad = in.quarantines().get(0).rows();
		assertEquals(List.of(8L, 10L, 12L), bad.stream().map(QuarantinedRow::line).toList());
		assertEquals(List.of(Fault.NAME, Fault.OUT_OF_RANGE, Fault.NOT_A_NUMBER),
				bad.stream().map(QuarantinedRow::fault).toList());
	}

	@Test
	void takesAddressesAloneForNoLists() {
		assertNull(ListCells.part(List.<String[]>of(new String[] { "02:4a:9f:00:00:10", "02:4a:9f:00:00:11" })));
	}
}
