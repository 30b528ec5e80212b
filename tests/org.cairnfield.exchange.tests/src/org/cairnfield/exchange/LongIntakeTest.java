package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.notes;
import static org.cairnfield.exchange.Surveys.preview;
import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongIntakeTest {

	private static final String A = "00:00:5E:00:53:01";
	private static final String B = "00:00:5E:00:53:02";

	@TempDir
	Path folder;

	@Test
	void gathersReadingsByIdThoughOthersComeBetween() throws IntakeException {
		Path f = file(folder, "a.csv", "sample,x,y,floor,building,bssid,rssi\n"
				+ "S1,1,2,0,Hall," + A + ",-60\nS2,3,4,1,Hall," + A + ",-61\nS1,1,2,0,Hall," + B + ",-70\n");
		assertEquals(Layout.LONG, preview(f).layout());
		Intake in = read(f);
		assertEquals("Hall 0 (1.0, 2.0) " + A + ":-60 " + B + ":-70", sample(in.map(), 0));
		assertEquals("Hall 1 (3.0, 4.0) " + A + ":-61", sample(in.map(), 1));
		assertEquals(List.of("S1", "S2"), in.sampleIds());
		assertEquals(3, in.accepted());
	}

	@Test
	void gathersByPlaceAndTimeWithoutAnId() throws IntakeException {
		Intake in = read(file(folder, "a.csv",
				"time;x;y;floor;mac;level\n1601130306;1,5;2;0;" + A + ";-60\n1601130306;1,5;2;0;" + B
						+ ";-70\n1601130309;1,5;2;0;" + A + ";-62\n"));
		assertEquals(2, in.map().size());
		assertEquals("a 0 (1.5, 2.0) " + A + ":-60 " + B + ":-70", sample(in.map(), 0));
		assertEquals(1601130309000L, in.map().timeMillis(1));
	}

	@Test
	void takesTheStrongestOfRepeatedReadingsAndTells() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "id,x,y,ap,rssi\n1,1,2," + A + ",-60\n1,1,2," + A + ",-55\n1,1,2," + B
				+ ",-70\n1,1,2," + B + ",-70\n"));
		assertEquals("a 0 (1.0, 2.0) " + A + ":-55 " + B + ":-70", sample(in.map(), 0));
		assertTrue(notes(in, "2 readings repeat an access point of their sample, 1 of them with another level"));
	}

	@Test
	void keepsASampleThatHeardNothing() throws IntakeException {
		Intake in = read(
				file(folder, "a.csv", "id,x,y,bssid,rssi\n1,1,2," + A + ",-60\n2,1,3," + A + ",100\n3,1,4,,\n4,1,2," + A
						+ ",100\n"));
		assertEquals(4, in.map().size());
		assertEquals(0, in.map().heard(1));
		assertEquals(1, in.map().accessPointCount());
	}

	@Test
	void quarantinesReadingsThatContradictTheirSample() throws IntakeException {
		Intake in = read(file(folder, "a.csv",
				"id,x,y,bssid,rssi\n1,1,2," + A + ",-60\n1,9,9," + B + ",-70\n2,1,2,," + "-70\n"));
		List<QuarantinedRow> rows = in.quarantines().get(0).rows();
		assertEquals(List.of(Fault.CONFLICT, Fault.NAME), rows.stream().map(QuarantinedRow::fault).toList());
		assertEquals("sample '1' was elsewhere on line 2", rows.get(0).reason());
		assertEquals(1, in.map().size());
	}

	@Test
	void warnsWhereNearlyEveryRowBecomesASample() throws IntakeException {
		StringBuilder text = new StringBuilder("time,x,y,bssid,rssi\n");
		for (int i = 0; i < 30; i++) {
			text.append(1601130306 + i).append(",1,2,").append(A).append(",-60\n");
		}
		assertTrue(notes(read(file(folder, "a.csv", text.toString())), "nearly every row"));
	}
}
