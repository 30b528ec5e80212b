package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.notes;
import static org.cairnfield.exchange.Surveys.preview;
import static org.cairnfield.exchange.Surveys.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotHeardGuessTest {

	@TempDir
	Path folder;

	/** Sixty samples, each of which hears two of six access points. */
	private Path table(String sign) {
		StringBuilder text = new StringBuilder("x,y,AP1,AP2,AP3,AP4,AP5,AP6\n");
		for (int i = 0; i < 60; i++) {
			text.append(i).append(",1");
			for (int ap = 0; ap < 6; ap++) {
				text.append(',').append((i + ap) % 3 == 0 ? Integer.toString(-40 - (i * 7 + ap * 5) % 50) : sign);
			}
			text.append('\n');
		}
		return file(folder, "t.csv", text.toString());
	}

	// +100 for access points that were not heard is what published sets describe; -100 to -110 in place of
	// missing values is common practice
	@ParameterizedTest
	@CsvSource(value = { "100|100", "0|0", "-110|-110", "-200|-200", "''|empty", "NaN|nan", "100.0|100", "-105|-105",
			"77|77" }, delimiter = '|')
	void findsWhatMeansNotHeard(String sign, String expected) throws IntakeException {
		Intake in = read(table(sign));
		assertEquals(expected, in.notHeard());
		assertEquals(120, in.map().readingCount());
		assertEquals(6, in.map().accessPointCount());
		assertEquals(0, in.quarantined());
	}

	@Test
	void givesEvidenceInWords() throws IntakeException {
		assertEquals("value 100 in 67 % of 360 cells, never within the -89 to -40 dBm of the others",
				preview(table("100")).guess("not heard").orElseThrow().evidence());
	}

	@Test
	void takesAGenuineMinus110ForALevelBesideASign() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,AP1,AP2\n1,1,-110,100\n1,2,-110,-60\n1,3,-110,100\n"));
		assertEquals("100", in.notHeard());
		assertEquals(-110, in.map().rssiDbm(0, 0, 1));
	}

	@Test
	void flagsZeroAndQuarantinesOtherPositiveValues() throws IntakeException {
		Intake in = read(
				file(folder, "a.csv", "x,y,AP1,AP2\n1,1,-60,100\n1,2,0,-60\n1,3,-70,100\n1,4,-70,5\n1,5,-70,100\n"));
		assertEquals("100", in.notHeard());
		assertTrue(notes(in, "1 readings of 0 dBm"));
		assertEquals(1, in.quarantined());
		assertEquals(Fault.OUT_OF_RANGE, in.quarantines().get(0).rows().get(0).fault());
	}

	@Test
	void neverTakesAPlainLowestLevelForASign() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,AP1,AP2\n1,1,-60,-100\n1,2,-99,-60\n1,3,-100,-98\n"));
		assertEquals(6, in.map().readingCount());
		assertEquals("empty", in.notHeard());
	}

	@Test
	void looksForNoHeapWhereTheLayoutSaysThatBlankMeansNotHeard() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,floor,building,AP1,AP2\n" + "1,1,0,Hall,-110,-110\n".repeat(18)
				+ "1,1,0,Hall,-60,-61\n".repeat(2)));
		assertEquals("empty", in.notHeard());
		assertEquals(40, in.map().readingCount());
	}

	@Test
	void takesOverWhatTheOtherFilesSay() throws IntakeException {
		Path full = file(folder, "full.csv", "x,y,AP1,AP2\n1,1,-60,-70\n");
		assertEquals("100", read(full, table("100")).reports().get(0).notHeard());
	}

	@Test
	void countsBlanksBesideASign() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,AP1,AP2\n1,1,-60,100\n1,2,-61,100\n1,3,,100\n1,3,-62,-70\n"));
		assertEquals("100", in.notHeard());
		assertTrue(notes(in, "1 blank cells are taken as not heard, besides 100"));
	}
}
