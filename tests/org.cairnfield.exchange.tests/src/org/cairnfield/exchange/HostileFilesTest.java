package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.gzip;
import static org.cairnfield.exchange.Surveys.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.GZIPOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that nobody should have sent: each is refused in words, or its bad rows are quarantined. */
class HostileFilesTest {

	@TempDir
	Path folder;

	private IntakeException refused(Path f) {
		IntakeException e = assertThrows(IntakeException.class, () -> read(f));
		assertEquals(f, e.file());
		assertTrue(e.getMessage().contains(f.getFileName().toString()), e.getMessage());
		assertTrue(e.remedy().length() > 10, "no remedy: " + e.getMessage());
		return e;
	}

	private void refusedFor(String what, Path f) {
		IntakeException e = refused(f);
		assertTrue(e.what().contains(what), e.what());
	}

	@Test
	void refusesFilesThatHoldNothing() {
		refusedFor("is empty", file(folder, "empty.csv", ""));
		refusedFor("is empty", file(folder, "empty.csv.gz", gzip(new byte[0])));
		refusedFor("blank lines", file(folder, "blank.csv", "\n\n \n"));
		refusedFor("no rows", file(folder, "header.csv", "x,y,AP1,AP2\n"));
		refusedFor("is empty", file(folder, "mark.csv", new byte[0]));
		refusedFor("blank lines", file(folder, "bom.csv", "\uFEFF"));
	}

	@Test
	void refusesFilesThatAreNotText() {
		byte[] noise = new byte[5000];
		new Random(1).nextBytes(noise);
		refusedFor("not text", file(folder, "noise.csv", noise));
		refusedFor("not text", file(folder, "nul.csv", "x,y,AP1\n1,2,-60\n\0\0\n"));
		refusedFor("not text",
				file(folder, "image.csv", new byte[] { (byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13 }));
		refusedFor("workbook", file(folder, "book.csv", new byte[] { 'P', 'K', 3, 4, 20, 0, 6, 0 }));
	}

	@Test
	void refusesWhatIsNotAReadableFile() throws IOException {
		refusedFor("no such file", folder.resolve("missing.csv"));
		refusedFor("folder", Files.createDirectory(folder.resolve("sub.csv")));
		Path locked = file(folder, "locked.csv", "x,y,AP1\n1,2,-60\n");
		assumeFalse(!locked.toFile().setReadable(false) || Files.isReadable(locked), "this user may read everything");
		refusedFor("may not be read", locked);
	}

	@Test
	void refusesDamagedCompression() {
		StringBuilder text = new StringBuilder("x,y,AP1\n");
		Random random = new Random(1);
		for (int i = 0; i < 50_000; i++) {
			text.append(random.nextInt(1000)).append(",2,-60\n");
		}
		byte[] whole = gzip(text.toString().getBytes(StandardCharsets.UTF_8));
		refusedFor("ends too early", file(folder, "cut.csv.gz", Arrays.copyOf(whole, whole.length / 2)));
		refusedFor("ends too early", file(folder, "cut0.csv.gz", Arrays.copyOf(whole, 6)));
		byte[] broken = whole.clone();
		Arrays.fill(broken, whole.length / 2, whole.length / 2 + 200, (byte) 0xff);
		refusedFor("damaged", file(folder, "broken.csv.gz", broken));
	}

	@Test
	void stopsABombBeforeItHasGrown() throws IOException {
		Path bomb = folder.resolve("bomb.csv.gz");
		byte[] rows = ("1,2,-60" + ",100".repeat(200) + "\n").repeat(80).getBytes(StandardCharsets.UTF_8);
		try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(bomb))) {
			out.write(("x,y,AP1" + ",AP2".repeat(200) + "\n").getBytes(StandardCharsets.UTF_8));
			for (int i = 0; i < 1600; i++) {
				out.write(rows);
			}
		}
		Limits l = Limits.usual();
		IntakeOptions strict = IntakeOptions.GUESS.withLimits(
				new Limits(l.recordChars(), l.columns(), l.accessPoints(), l.sites(), l.readings(), 100, 10));
		IntakeException e = assertThrows(IntakeException.class, () -> read(strict, bomb));
		assertTrue(e.what().contains("more than 100 times its size"), e.what());
	}

	@Test
	void stopsAtALineOfAHundredMegabytes() throws IOException {
		Path f = folder.resolve("line.csv");
		byte[] piece = "-60".repeat(1 << 16).getBytes(StandardCharsets.UTF_8);
		try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(f))) {
			out.write("x,y,AP1\n1,2,".getBytes(StandardCharsets.UTF_8));
			for (long n = 0; n < 100_000_000; n += piece.length) {
				out.write(piece);
			}
		}
		IntakeException e = refused(f);
		assertTrue(e.what().contains("longer than"), e.what());
		assertEquals(2, e.line());
	}

	@Test
	void stopsAtAMillionColumns() {
		StringBuilder text = new StringBuilder("x,y");
		for (int i = 0; i < 1_000_000; i++) {
			text.append(",A").append(i % 10);
		}
		refusedFor("1,000,002 columns", file(folder, "wide.csv", text.append("\n1,2\n").toString()));
	}

	@Test
	void namesTheLineOfAQuotationMarkThatIsNeverClosed() {
		IntakeException e = refused(file(folder, "quote.csv",
				"x,y,floor,building,AP1\n1,2,0,Hall,-60\n1,2,0,\"Hall,-60\n1,2,0,Hall,-60\n"));
		assertTrue(e.what().contains("quotation mark"), e.what());
		assertEquals(3, e.line());
	}

	@Test
	void stopsWhereMemoryWouldRunOut() {
		Limits l = Limits.usual();
		IntakeOptions small = IntakeOptions.GUESS.withLimits(
				new Limits(l.recordChars(), l.columns(), l.accessPoints(), 5, 100, l.expansionFold(), 10));
		IntakeException e = assertThrows(IntakeException.class,
				() -> read(small, file(folder, "many.csv", "x,y,AP1\n" + "1,2,-60\n".repeat(200))));
		assertTrue(e.what().contains("more than 100 readings"), e.what());
		StringBuilder sites = new StringBuilder("x,y,building,AP1\n");
		for (int i = 0; i < 9; i++) {
			sites.append("1,2,").append(2 * i).append(",-60\n");
		}
		e = assertThrows(IntakeException.class, () -> read(small, file(folder, "sites.csv", sites.toString())));
		assertTrue(e.what().contains("5 different buildings"), e.what());
	}

	@Test
	void quarantinesRaggedRowsAndOddNumbers() throws IntakeException {
		Intake in = read(file(folder, "odd.csv",
				"x,y,AP1,AP2\n1,2,-60,100\n1,2,-60\n1,2,-60,100,-70\nInfinity,2,-60,100\n"
						+ "1,NaN,-60,100\n1,2,NaN,100\n1,2,-Infinity,-60\n99999999999999999999999999,2,-60,100\n1,2,-1e400,100\n"
						+ "1,2,-60,-70\n"));
		assertEquals(2, in.accepted());
		assertEquals(8, in.quarantined());
	}

	@Test
	void quarantinesRowsWithNulInNames() throws IntakeException {
		StringBuilder text = new StringBuilder("x,y,floor,building,AP1\n");
		text.append("1,2,0,Hall,-60\n".repeat(80_000)).append("1,2,0,Ha\0ll,-60\n");
		Intake in = read(file(folder, "late.csv", text.toString()));
		assertEquals(Fault.NAME, in.quarantines().get(0).rows().get(0).fault());
		assertEquals(80_002, in.quarantines().get(0).rows().get(0).line());
	}

	@Test
	void saysWhatAFileOfProseLacks() {
		refused(file(folder, "prose.csv", "Dear colleague,\nplease find the survey, as promised,\nattached.\n"));
		refused(file(folder, "page.csv", "<!DOCTYPE html>\n<html><body>\n<p>404</p>\n</body></html>\n"));
		refused(file(folder, "json.csv", "{\"samples\": [\n {\"x\": 1, \"y\": 2}\n]}\n"));
	}

	@Test
	void refusesATableInWhichNoLevelIsLeft() {
		refusedFor("no column of levels", file(folder, "times.csv", "x,y,AP1\n" + "1,2,4000\n1,3,5000\n".repeat(50)));
		StringBuilder late = new StringBuilder("x,y,floor,building,AP1\n" + "1,2,0,Hall,\n".repeat(21_000));
		refusedFor("no column holds levels",
				file(folder, "late.csv", late.append("1,2,0,Hall,4000\n1,3,0,Hall,5000\n".repeat(50)).toString()));
	}

	@Test
	void refusesAnEmptyListOfFiles() {
		assertThrows(IntakeException.class, () -> read());
	}
}
