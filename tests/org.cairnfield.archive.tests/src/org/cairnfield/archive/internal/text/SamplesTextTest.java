package org.cairnfield.archive.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SamplesTextTest {

	private static final String HEADER = "cairnfield samples 1";
	private static final String COLUMNS = "id\tfloor\tx\ty\ttime\tstate\treadings";
	private static final String FIRST = "S-1\t0\t0.66\t13\t2031-04-08T07:30:00Z\tkept\t00005e005301:-61 00005e005302:-74";
	private static final String SECOND = "S-2\t-1\t2.86\t-0.5\t-\taside: moved\t-";

	private final PartReport report = new PartReport("surveys/th/spring.samples");

	private SampleTable read(byte[] file) throws IOException {
		return SamplesText.read(new ByteArrayInputStream(file), Migrations.NONE, report);
	}

	private List<String> reasons() {
		return report.damages().stream().map(damage -> damage.line() + " " + damage.reason()).toList();
	}

	private static SampleTable two() {
		return SampleTable.builder().sample("S-2", -1, 2.86, -0.5).reason("moved").sample("S-1", 0, 0.66, 13)
				.time(1_933_399_800_000L).reading("00005e005302", -74).reading("00005e005301", -61).build();
	}

	@Test
	void writesOneSampleALine() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		SamplesText.write(two(), out);
		assertEquals(new String(Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND), StandardCharsets.UTF_8),
				out.toString(StandardCharsets.UTF_8));
	}

	@Test
	void readsWhatItDescribes() throws IOException {
		assertEquals(two(), read(Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND)));
		assertEquals(List.of(), report.damages());
		assertEquals(List.of(), report.notices());
	}

	@Test
	void readsLinesInAnyOrder() throws IOException {
		assertEquals(two(), read(Lines.sealed(2, HEADER, COLUMNS, SECOND, FIRST)));
		assertEquals(List.of(), report.damages());
	}

	@Test
	void readsLinesThatEndWithCrLf() throws IOException {
		String text = new String(Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND), StandardCharsets.UTF_8);
		assertEquals(two(), read(text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8)));
		assertEquals(List.of(), report.damages());
		assertTrue(report.notices().get(0).contains("CR LF"), report.notices()::toString);
	}

	@Test
	void tellsTheLineThatIsDamagedAndReadsTheOthers() throws IOException {
		SampleTable table = read(Lines.sealed(3, HEADER, COLUMNS, FIRST, "S-1b\t0\tx\t1\t-\tkept\t-", SECOND));
		assertEquals(two(), table);
		assertEquals(List.of("4 not a number: 'x'"), reasons());
		Damage damage = report.damages().get(0);
		assertEquals("surveys/th/spring.samples", damage.file());
		assertFalse(damage.remedy().isBlank());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "S-1", "S-3\t0\t1\t1\t-\tkept", "S-3\t0\t1\t1\t-\tkept\t-\t", "\t0\t1\t1\t-\tkept\t-",
			"S-3\t99999\t1\t1\t-\tkept\t-", "S-3\t+1\t1\t1\t-\tkept\t-", "S-3\t0\tNaN\t1\t-\tkept\t-",
			"S-3\t0\t1\t1\t\tkept\t-",
			"S-3\t0\t1\t1\t2031-04-08\tkept\t-", "S-3\t0\t1\t1\t-\tKept\t-", "S-3\t0\t1\t1\t-\taside: \t-",
			"S-3\t0\t1\t1\t-\taside\t-",
			"S-3\t0\t1\t1\t-\tkept\t", "S-3\t0\t1\t1\t-\tkept\ta", "S-3\t0\t1\t1\t-\tkept\ta:",
			"S-3\t0\t1\t1\t-\tkept\t:-1",
			"S-3\t0\t1\t1\t-\tkept\ta:-129", "S-3\t0\t1\t1\t-\tkept\ta:1000", "S-3\t0\t1\t1\t-\tkept\ta:-1 a:-2",
			"S-3\t0\t1\t1\t-\tkept\tb:-1 a:-2 b:-3", "S-3\t0\t1\t1\t-\tkept\ta:-1  b:-2",
			"S-3\t0\t1\t1\t-\tkept\ta:-1 ",
			"S-3\t0\t1\t1\t-\tkept\ta/b:-1", "S-1\t0\t1\t1\t-\tkept\t-", "S\\q\t0\t1\t1\t-\tkept\t-",
			"S-3\t0\t1e999\t1\t-\tkept\t-" })
	void refusesALineThatIsNone(String line) throws IOException {
		SampleTable table = read(Lines.sealed(3, HEADER, COLUMNS, FIRST, SECOND, line));
		assertEquals(1, report.damages().size(), this::reasonsText);
		assertEquals(5, report.damages().get(0).line());
		assertEquals(two(), table);
	}

	private String reasonsText() {
		return reasons().toString();
	}

	@Test
	void tellsOfBytesThatAreNoText() throws IOException {
		byte[] file = Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND.replace("moved", "mov?d"));
		file[new String(file, StandardCharsets.ISO_8859_1).indexOf('?')] = (byte) 0xff;
		read(file);
		assertEquals("4 not in UTF-8", reasons().get(0));
	}

	@Test
	void noticesALineThatIsGone() throws IOException {
		byte[] file = Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND);
		String text = new String(file, StandardCharsets.UTF_8).replace(FIRST + "\n", "");
		read(Lines.ascii(text));
		assertTrue(report.isOnlyChanged());
		assertTrue(reasons().get(0).contains("does not match its checksum"), this::reasonsText);
	}

	@Test
	void noticesADigitThatChanged() throws IOException {
		String text = new String(Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND), StandardCharsets.UTF_8);
		read(Lines.ascii(text.replace("-74", "-75")));
		assertTrue(report.isOnlyChanged());
	}

	@Test
	void noticesWhatFollowsTheEnd() throws IOException {
		read(Lines.ascii(new String(Lines.sealed(1, HEADER, COLUMNS, FIRST), StandardCharsets.UTF_8) + SECOND + "\n"));
		assertEquals(List.of("5 goes on after its end"), reasons());
	}

	@Test
	void noticesACountThatIsWrong() throws IOException {
		read(Lines.sealed(3, HEADER, COLUMNS, FIRST, SECOND));
		assertTrue(report.isOnlyChanged());
	}

	@Test
	void noticesEveryCut() throws IOException {
		byte[] file = Lines.sealed(2, HEADER, COLUMNS, FIRST, SECOND);
		for (int length = 0; length < file.length; length++) {
			PartReport cut = new PartReport("f");
			SamplesText.read(new ByteArrayInputStream(file, 0, length), Migrations.NONE, cut);
			assertTrue(cut.isDamaged(), "cut to " + length);
		}
	}

	@Test
	void takesASampleWithTheIdEndForWhatItIs() throws IOException {
		SampleTable table = SampleTable.builder().sample("end", 0, 1, 2).build();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		SamplesText.write(table, out);
		assertEquals(table, read(out.toByteArray()));
		assertEquals(List.of(), report.damages());
	}

	@ParameterizedTest
	@ValueSource(strings = { "cairnfield split 1", "cairnfield samples", "cairnfield samples x",
			"# cairnfield samples 1", "" })
	void refusesAFileThatIsSomethingElse(String header) throws IOException {
		read(Lines.sealed(1, header, COLUMNS, FIRST));
		assertTrue(reasons().get(0).startsWith("1 does not begin with"), this::reasonsText);
	}

	@Test
	void saysThatANewerVersionIsNeeded() throws IOException {
		read(Lines.sealed(1, "cairnfield samples 3", COLUMNS, FIRST));
		assertEquals(1, report.damages().size());
		assertTrue(reasons().get(0).contains("newer Cairnfield (format 3; this one reads up to 2)"), this::reasonsText);
	}

	@Test
	void listsTheFirstDamagedLinesAndCountsTheRest() throws IOException {
		String[] lines = new String[102];
		Arrays.fill(lines, "bad");
		lines[0] = HEADER;
		lines[1] = COLUMNS;
		read(Lines.sealed(100, lines));
		assertEquals(21, report.damages().size());
		assertEquals("0 80 more lines are damaged", reasons().get(20));
	}

	@Test
	void refusesALineThatWouldFillTheMemory() throws IOException {
		byte[] start = Lines.ascii(HEADER + "\n" + COLUMNS + "\n");
		@SuppressWarnings("resource") // of bytes in memory
		InputStream endless = new SequenceInputStream(new ByteArrayInputStream(start), new InputStream() {
			@Override
			public int read() {
				return 'x';
			}
		});
		SamplesText.read(endless, Migrations.NONE, report);
		assertTrue(reasons().get(0).startsWith("3 a line is longer"), this::reasonsText);
	}

	@Test
	void readsAcrossTheBoundariesOfItsBuffer() throws IOException {
		var builder = SampleTable.builder();
		for (int i = 0; i < 3000; i++) {
			builder.sample(String.format("%0" + (4 + i % 60) + "d", i), i % 3, i / 7.0, i / 100.0).time(i * 1234L);
			for (int k = 0; k < i % 90; k++) {
				builder.reading("ap-" + k, -30 - k);
			}
		}
		SampleTable table = builder.build();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		SamplesText.write(table, out);
		byte[] file = out.toByteArray();
		for (int piece : new int[] { 1 << 20, 4096, 1001, 7 }) {
			InputStream trickling = new ByteArrayInputStream(file) {
				@Override
				public synchronized int read(byte[] b, int off, int len) {
					return super.read(b, off, Math.min(len, piece));
				}
			};
			assertEquals(table, SamplesText.read(trickling, Migrations.NONE, report), "in pieces of " + piece);
			assertEquals(List.of(), report.damages());
		}
	}
}
