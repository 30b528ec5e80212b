package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.notes;
import static org.cairnfield.exchange.Surveys.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuarantineTest {

	private static final String BAD = "id,time,device,building,floor,x,y,AP1,AP2\r\n" // 1
			+ "1,,,\"Hall\r\nEast\",0,1,2,-60,\r\n" // 2 and 3
			+ "\r\n" // 4
			+ "2,,,Hall,0,1,2,-60\r\n" // 5: too few
			+ "3,,,\"Hall\r\nEast\",0,1,2,loud,\r\n" // 6 and 7
			+ "4,,,Hall,0,1,2,-121,\r\n" // 8
			+ "5,,,Hall,0,,2,-60,\r\n" // 9
			+ "6,,,Hall,0,NaN,2,-60,\r\n" // 10
			+ "7,,,Hall,0,1,1e300,-60,\r\n" // 11
			+ "8,,,Hall,,1,2,-60,\r\n" // 12
			+ "9,soon,,Hall,0,1,2,-60,\r\n" // 13
			+ "10,,,,0,1,2,-60,\r\n" // 14
			+ "=1+1,,,Hall,0,1,2,7,\r\n" // 15
			+ "12,,,Hall,0,1,2,-61,-62\r\n"; // 16

	@TempDir
	Path folder;

	@Test
	void keepsLineReasonAndRowAndTakesInTheRest() throws IntakeException {
		Intake in = read(file(folder, "a.csv", BAD));
		Quarantine q = in.quarantines().get(0);
		assertEquals(List.of(5L, 6L, 8L, 9L, 10L, 11L, 12L, 13L, 14L, 15L),
				q.rows().stream().map(QuarantinedRow::line).toList());
		assertEquals(List.of(Fault.FIELD_COUNT, Fault.NOT_A_NUMBER, Fault.OUT_OF_RANGE, Fault.POSITION, Fault.POSITION,
				Fault.POSITION, Fault.FLOOR, Fault.TIME, Fault.NAME, Fault.OUT_OF_RANGE),
				q.rows().stream().map(QuarantinedRow::fault).toList());
		assertEquals("has 8 fields, 9 expected", q.rows().get(0).reason());
		assertEquals("2,,,Hall,0,1,2,-60", q.rows().get(0).record());
		assertEquals("3,,,\"Hall\r\nEast\",0,1,2,loud,", q.rows().get(1).record());
		assertTrue(q.rows().get(1).reason().contains("lines 6 to 7"));
		assertEquals(Map.of(Fault.FIELD_COUNT, 1, Fault.NOT_A_NUMBER, 1, Fault.OUT_OF_RANGE, 2, Fault.POSITION, 3,
				Fault.FLOOR, 1, Fault.TIME, 1, Fault.NAME, 1), q.counts());
		assertEquals(12, in.rowsRead());
		assertEquals(2, in.accepted());
		assertEquals(10, in.quarantined());
		assertEquals(List.of("1", "12"), in.sampleIds());
	}

	@Test
	void writesATableBesideTheInput() throws IntakeException, IOException {
		Quarantine q = read(file(folder, "a.csv", BAD)).quarantines().get(0);
		Path written = q.writeBeside().orElseThrow();
		assertEquals(folder.resolve("a.csv.quarantine.csv"), written);
		String text = Files.readString(written);
		assertTrue(text.startsWith("line,reason,record\r\n5,\"has 8 fields, 9 expected\",\"2,,,Hall,0,1,2,-60\"\r\n"),
				text);
		assertTrue(text.contains(",\"'=1+1,,,Hall,0,1,2,7,\"\r\n"), text);
		q.writeBeside();
		try (var files = Files.list(folder)) {
			assertEquals(2, files.count(), "an older report is replaced and nothing else is left");
		}
	}

	@Test
	void writesNothingWhereNothingIsWrong() throws IntakeException {
		Quarantine q = read(file(folder, "a.csv", "x,y,AP1\n1,2,-60\n")).quarantines().get(0);
		assertTrue(q.writeBeside().isEmpty());
		assertFalse(Files.exists(folder.resolve("a.csv.quarantine.csv")));
	}

	@Test
	void goesToAnotherFolderAndSaysWhereItCannot() throws IntakeException, IOException {
		Quarantine q = read(file(folder, "a.csv", BAD)).quarantines().get(0);
		Path other = Files.createDirectory(folder.resolve("other"));
		assertEquals(other.resolve("a.csv.quarantine.csv"), q.writeTo(other).orElseThrow());
		IntakeException e = assertThrows(IntakeException.class, () -> q.writeTo(folder.resolve("nowhere")));
		assertTrue(e.getMessage().contains("Name another folder"), e.getMessage());
	}

	@Test
	void asksAboutAColumnThatIsWhollyOutOfRange() throws IntakeException {
		StringBuilder text = new StringBuilder("x,y,AP1,AP2\n");
		for (int i = 0; i < 2000; i++) {
			text.append("1,2,-60,").append(40 + i % 50).append('\n');
		}
		Intake in = read(file(folder, "a.csv", text.toString()));
		assertEquals(0, in.quarantined());
		assertEquals(List.of("AP1"), in.map().accessPoints());
		assertTrue(notes(in, "out of range from top to bottom, so left out: column 'AP2'"));
	}

	@Test
	void asksAboutSuchAColumnThoughItBeginsBlank() throws IntakeException {
		StringBuilder text = new StringBuilder("x,y,floor,building,AP1,AP2\n");
		for (int i = 0; i < 30_000; i++) {
			text.append("1,2,0,Hall,-60,").append(i < 25_000 ? "" : Integer.toString(40 + i % 50)).append('\n');
		}
		Intake in = read(file(folder, "a.csv", text.toString()));
		assertEquals(0, in.quarantined());
		assertEquals(30_000, in.map().size());
		assertTrue(notes(in, "column 6 ('AP2') holds no level"));
	}

	@Test
	void countsMoreThanItKeeps() throws IntakeException, IOException {
		Limits l = Limits.usual();
		IntakeOptions few = IntakeOptions.GUESS.withLimits(new Limits(l.recordChars(), l.columns(), l.accessPoints(),
				l.sites(), l.readings(), l.expansionFold(), 3));
		Quarantine q = read(few, file(folder, "a.csv", BAD)).quarantines().get(0);
		assertEquals(10, q.size());
		assertEquals(3, q.rows().size());
		assertTrue(Files.readString(q.writeBeside().orElseThrow()).endsWith(",7 further rows are not listed,\r\n"));
	}
}
