package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.notes;
import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.core.map.RadioMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WideIntakeTest {

	@TempDir
	Path folder;

	@Test
	void understandsPositionFloorBuildingThenAccessPoints() throws IntakeException {
		Intake in = read(file(folder, "survey.csv", "x,y,floor,building,lobby,00:00:5E:00:53:01,never\n"
				+ "1.5,2,0,Tide House,-61,,\n3,4,1,Lantern Store,,-110,\n"));
		assertEquals(List.of("lobby", "00:00:5E:00:53:01", "never"), in.map().accessPoints());
		assertEquals("Tide House 0 (1.5, 2.0) lobby:-61", sample(in.map(), 0));
		// a genuine -110 dBm differs from missing
		assertEquals("Lantern Store 1 (3.0, 4.0) 00:00:5E:00:53:01:-110", sample(in.map(), 1));
		assertEquals("empty", in.notHeard());
		assertEquals(List.of("1", "2"), in.sampleIds());
	}

	@Test
	void findsRolesAtTheEndAndByOtherWords() throws IntakeException {
		Intake in = read(file(folder, "s.csv",
				"WAP1,WAP2,WAP3,easting,Northing [m],Storey,BuildingID,PhoneID,UserID,timestamp,sample_id,mood\n"
						+ "-50,100,-70,10,20,2,4,guide A,kl,1601130306,S1,4\n-51,-99,100,11,21,2,4,guide B,kl,1601130307,S2,5\n"
						+ "-52,100,100,11,21,2,4,,kl,,S3,5\n"));
		RadioMap map = in.map();
		assertEquals(List.of("WAP1", "WAP2", "WAP3"), map.accessPoints());
		assertEquals("4 2 (11.0, 21.0) WAP1:-51 WAP2:-99", sample(map, 1));
		assertEquals(List.of("guide A", "guide B"), map.devices());
		assertEquals(RadioMap.NO_DEVICE, map.device(2));
		assertEquals(1601130306000L, map.timeMillis(0));
		assertEquals(RadioMap.NO_TIME, map.timeMillis(2));
		assertEquals(List.of("S1", "S2", "S3"), in.sampleIds());
		assertTrue(notes(in, "not used: column 'mood'"));
	}

	@Test
	void leavesOutRoundTripTimesAndNamesAccessPointsWithoutTheMeasure() throws IntakeException {
		Intake in = read(file(folder, "hall_train.csv", "X,Y,AP1 RTT(mm),AP2 RTT(mm),AP1 RSS(dBm),AP2 RSS(dBm)\n"
				+ "0,1,3148.0,10791.0,-67.0,-200.0\n0,2,3054.0,10801.0,-68.6,-74.0\n0,3,3050.0,10701.0,-68.5,-74.0\n"));
		assertEquals(List.of("AP1", "AP2"), in.map().accessPoints());
		assertEquals("-200", in.notHeard());
		assertEquals("hall 0 (0.0, 1.0) AP1:-67", sample(in.map(), 0));
		assertEquals("hall 0 (0.0, 2.0) AP1:-69 AP2:-74", sample(in.map(), 1));
		assertTrue(notes(in, "'AP1 RTT(mm)', 'AP2 RTT(mm)'"));
		assertTrue(notes(in, "rounded to the nearest dBm, halves to the stronger; 2 of 5 changed"));
		assertTrue(notes(in, "no floor column"));
		assertTrue(notes(in, "no building column"));
	}

	@Test
	void unitesFilesByNameOfAccessPointAndSite() throws IntakeException {
		Path first = file(folder, "a.csv", "x,y,floor,building,AP1,AP2\n1,1,0,Tide House,-60,-70\n");
		Path second = file(folder, "b.csv", "AP3,AP2,floor,y,x,building\n-50,-71,0,2,1,Tide House\n");
		Intake in = read(first, second);
		assertEquals(List.of("AP1", "AP2", "AP3"), in.map().accessPoints());
		assertEquals(List.of("Tide House"), in.map().sites());
		assertEquals("Tide House 0 (1.0, 2.0) AP2:-71 AP3:-50", sample(in.map(), 1));
		assertEquals(1, in.reports().get(1).firstSample());
		assertEquals(List.of("1", "2"), in.sampleIds());
	}

	@Test
	void keepsAccessPointsOfSitesApartWhereTold() throws IntakeException {
		Path f = file(folder, "a.csv", "x,y,floor,building,AP1\n1,1,0,Tide House,-60\n1,1,0,Lantern Store,-61\n");
		assertTrue(notes(read(f), "access-points-per-site"));
		assertEquals(List.of("Tide House/AP1", "Lantern Store/AP1"),
				read(IntakeOptions.GUESS.withAccessPointsPerSite(true), f).map().accessPoints());
	}

	/** A table of so many rows with a column as a spreadsheet fills it in. */
	private static String filledIn(String column, String stem, int rows) {
		StringBuilder table = new StringBuilder("x,y," + column + ",AP1\n");
		for (int row = 1; row <= rows; row++) {
			table.append(row).append(",2,").append(stem).append(row).append(",-6").append(row % 10).append('\n');
		}
		return table.toString();
	}

	@ParameterizedTest
	@CsvSource({ "building,", "building,House ", "floor," })
	void refusesAPlaceThatCountsUpWithEveryRow(String column, String stem) throws IntakeException {
		Path f = file(folder, "a.csv", filledIn(column, stem == null ? "" : stem, 9));
		IntakeException e = assertThrows(IntakeException.class, () -> read(f));
		assertTrue(e.getMessage().contains("column 3 ('" + column + "') counts up with every row"), e.getMessage());
		assertTrue(SurveyIntake.preview(List.of(f), IntakeOptions.GUESS).get(0).problems().get(0)
				.contains("counts up with every row"));
		assertEquals(9, read(IntakeOptions.GUESS.withRole(column, ColumnRole.IGNORED), f).map().size());
		assertEquals(9,
				read(IntakeOptions.GUESS.withRole(column, column.equals("floor") ? ColumnRole.FLOOR : ColumnRole.SITE),
						f).map().size(),
				"as specified");
	}

	@Test
	void takesAFewRowsOfAsManyFloors() throws IntakeException {
		assertEquals(5, read(file(folder, "a.csv", filledIn("floor", "", 5))).map().size());
	}

	@Test
	void numbersSamplesWhereIdsRepeat() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "id,x,y,AP1\nS1,1,1,-60\nS1,1,2,-61\n"));
		assertEquals(List.of("1", "2"), in.sampleIds());
		assertTrue(notes(in, "ids come more than once"));
	}

	@Test
	void readsFloorNamesAndTells() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,floor,AP1\n1,1,EG,-60\n1,2,1OG,-61\n1,2,Mezzanine,-61\n"));
		assertEquals(List.of(0, 1, 100), List.of(in.map().floor(0), in.map().floor(1), in.map().floor(2)));
		assertTrue(notes(in, "{1OG=1, EG=0, Mezzanine=100}"));
	}

	@Test
	void takesTheStrongestOfTwoColumnsOfOneName() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,AP1,AP2,AP1\n1,1,-70,-80,-60\n1,2,-50,-81,-60\n"));
		assertEquals("a 0 (1.0, 1.0) AP1:-60 AP2:-80", sample(in.map(), 0));
		assertEquals("a 0 (1.0, 2.0) AP1:-50 AP2:-81", sample(in.map(), 1));
		assertTrue(notes(in, "more than one column ('AP1')"));
	}

	@Test
	void refusesDegreesButTakesProjectedCoordinates() throws IntakeException {
		Path degrees = file(folder, "deg.csv", "longitude,latitude,AP1\n10.5,53.2,-60\n10.6,53.2,-61\n");
		IntakeException e = assertThrows(IntakeException.class, () -> read(degrees));
		assertTrue(e.getMessage().contains("degrees"), e.getMessage());
		Intake in = read(
				file(folder, "plane.csv", "longitude,latitude,AP1\n-7541.2,4864921.1,-60\n-7540.2,4864922.1,-61\n"));
		assertEquals(-7541.2, in.map().x(0));
	}

	@Test
	void changesUnitsThatTheHeaderNames() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x [cm],y [cm],AP1\n150,250,-60\n"));
		assertEquals(1.5, in.map().x(0));
		assertTrue(notes(in, "changed to metres"));
	}

	@Test
	void obeysEveryOption() throws IntakeException {
		Path f = file(folder, "a.csv", "p,q,AP1,AP2\n1,2,-60,-99\n3,4,-61,-98\n");
		Intake in = read(IntakeOptions.GUESS.withRole("p", ColumnRole.X).withRole("#2", ColumnRole.Y)
				.withSwapXY(true).withMetresPerUnit(0.5).withSite("Tide House").withFloor(3).withDevice("guide A")
				.withNotHeard("-99"), f);
		assertEquals("Tide House 3 (1.0, 0.5) AP1:-60", sample(in.map(), 0));
		assertEquals("guide A", in.map().devices().get(in.map().device(0)));
		IntakeException e = assertThrows(IntakeException.class,
				() -> read(IntakeOptions.GUESS.withRole("nowhere", ColumnRole.X), f));
		assertTrue(e.getMessage().contains("'nowhere'"), e.getMessage());
	}

	@Test
	void previewsWhatItCannotReadYet() throws IntakeException {
		Path f = file(folder, "a.csv", "p,q,AP1\n1,2,-60\n3,4,-61\n");
		Preview preview = Surveys.preview(f);
		assertTrue(preview.problems().get(0).contains("no columns for x and y were found among 'p', 'q', 'AP1'"),
				preview.problems().toString());
		assertEquals(List.of("1", "2", "-60"), preview.firstRows().get(0));
		assertEquals(List.of("AP1"), preview.columns(ColumnRole.SIGNAL).stream().map(Column::name).toList());
		assertTrue(preview.toText().contains("problem: no columns for x and y"), preview.toText());
	}

	@Test
	void readsAHeaderlessTableWithRolesByNumber() throws IntakeException {
		Intake in = read(IntakeOptions.GUESS.withRole("#3", ColumnRole.X).withRole("#4", ColumnRole.Y),
				file(folder, "a.csv", "-60,100,1,2\n-61,-70,3,4\n"));
		assertEquals("a 0 (3.0, 4.0) AP1:-61 AP2:-70", sample(in.map(), 1));
	}

	@Test
	void readsAgainWhereASignShowsOnlyFurtherDown() throws IntakeException {
		StringBuilder text = new StringBuilder("x,y,AP1,AP2\n");
		for (int i = 0; i < 25_000; i++) {
			text.append(i % 100).append(",1,-60,").append(i < 24_900 ? "-70" : "100").append('\n');
		}
		Intake in = read(file(folder, "a.csv", text.toString()));
		assertEquals("100", in.notHeard());
		assertEquals(0, in.quarantined());
		assertEquals(25_000 + 24_900, in.map().readingCount());
	}
}
