package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.notes;
import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PairedIntakeTest {

	@TempDir
	Path temp;
	private Path folder;

	@BeforeEach
	void makeFolder() throws IOException {
		folder = Files.createDirectories(temp.resolve("lantern-store").resolve("01"));
	}

	@Test
	void joinsSignalsCoordinatesIdsAndTimesOfLikeNames() throws IntakeException {
		Path crd1 = file(folder, "trn01crd.csv", "1,2,-1\n3,4,-1\n");
		Path ids1 = file(folder, "trn01ids.csv", "0101100101\n0101100102\n");
		Path tms1 = file(folder, "trn01tms.csv", "20200926142506\n20200926142513\n");
		Path rss1 = file(folder, "trn01rss.csv", "-45,100,-57\n-42,-44,100\n");
		Path rss2 = file(folder, "tst02rss.csv", "-46,100,-58\n-43,-45,100\n");
		Path crd2 = file(folder, "tst02crd.csv", "5,6,0\n7,8,0\n");
		Intake in = read(crd1, crd2, ids1, tms1, rss2, rss1);
		assertEquals(4, in.map().size());
		assertEquals("lantern-store 0 (5.0, 6.0) AP1:-46 AP3:-58", sample(in.map(), 0));
		assertEquals("lantern-store -1 (3.0, 4.0) AP1:-42 AP2:-44", sample(in.map(), 3));
		assertEquals(1601130306000L, in.map().timeMillis(2));
		assertEquals("100", in.notHeard());
		assertEquals(List.of("1", "2", "3", "4"), in.sampleIds());
		assertTrue(notes(in, "some samples have no id"));
		assertTrue(notes(in, "times without a zone are taken as UTC"));
		assertEquals(4, in.rowsRead());
		assertEquals(List.of("coordinates", "coordinates", "ids", "times", "signals", "signals"),
				in.reports().stream().map(FileReport::part).toList());
		assertEquals(List.of(crd1, ids1, tms1),
				SurveyIntake.preview(List.of(crd1, ids1, tms1, rss1), IntakeOptions.GUESS)
						.get(3).partners());
	}

	@Test
	void takesIdsWhereAllSamplesHaveOne() throws IntakeException {
		Intake in = read(file(folder, "a_rss.csv", "-45,100\n-42,-44\n"), file(folder, "a_crd.csv", "1,2\n3,4\n"),
				file(folder, "a_ids.csv", "0101\n0102\n"));
		assertEquals(List.of("0101", "0102"), in.sampleIds());
	}

	@Test
	void pairsByRowsWhereNamesSayNothing() throws IntakeException {
		Intake in = read(file(folder, "one.csv", "-45,100,-57\n-42,-44,100\n"), file(folder, "two.csv", "1,2\n3,4\n"));
		assertEquals("one 0 (3.0, 4.0) AP1:-42 AP2:-44", sample(in.map(), 1));
	}

	@Test
	void refusesPartnersOfAnotherLength() {
		Path rss = file(folder, "a_rss.csv", "-45,100\n-42,-44\n");
		Path crd = file(folder, "a_crd.csv", "1,2\n");
		IntakeException e = assertThrows(IntakeException.class, () -> read(rss, crd));
		assertTrue(e.getMessage().contains("2 rows of signals but 1 rows of coordinates"), e.getMessage());
	}

	@Test
	void saysWhatIsMissing() {
		Path rss = file(folder, "a_rss.csv", "-45,100\n-42,-44\n");
		assertTrue(assertThrows(IntakeException.class, () -> read(rss)).remedy().contains("coordinates"));
		Path crd = file(folder, "a_crd.csv", "1,2\n");
		assertTrue(assertThrows(IntakeException.class, () -> read(crd)).what().contains("no table of signals"));
	}

	@Test
	void namesBothLinesOfABadRow() throws IntakeException {
		Intake in = SurveyIntake.read(List.of(file(folder, "a_rss.csv", "-45,100\n-42,-44\n-43,-44\n"),
				file(folder, "a_crd.csv", "1,2\n\nx,4\n5,6\n")), IntakeOptions.GUESS, Workers.inline());
		QuarantinedRow row = in.quarantines().get(0).rows().get(0);
		assertEquals(2, row.line());
		assertEquals("x is not a number: 'x' (a_crd.csv line 3)", row.reason());
		assertEquals("-42,-44", row.record());
	}

	@Test
	void joinsTablesWithHeaders() throws IntakeException {
		Intake in = read(file(folder, "levels.csv", "AP7,AP8\n-45,\n-42,-44\n"),
				file(folder, "coordinates.csv", "x,y,floor,building\n1,2,0,Hall\n3,4,1,Hall\n"));
		assertEquals("Hall 1 (3.0, 4.0) AP7:-42 AP8:-44", sample(in.map(), 1));
	}
}
