package org.cairnfield.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilledTableTest {

	@TempDir
	Path folder;

	private List<FilledTable.Row> read(String text) throws Exception {
		Path file = folder.resolve("t.csv");
		Files.writeString(file, text);
		return FilledTable.read(file, List.of("a", "b"));
	}

	@Test
	void namesTheLineOnWhichARowBegins() throws Exception {
		List<FilledTable.Row> rows = read("a,b\n1,\"two\nlines\"\n2,x\n");
		assertEquals(List.of(2L, 4L), rows.stream().map(FilledTable.Row::line).toList());
		assertEquals("two\nlines", rows.get(0).field("b"));
	}

	@Test
	void readsWhatSpreadsheetsMakeOfIt() throws Exception {
		List<FilledTable.Row> rows = read("\uFEFFb;a;c\r\n x ;1\r\n;;\r\n");
		assertEquals(1, rows.size());
		assertEquals("x", rows.get(0).field("b"));
		assertEquals("", rows.get(0).field("c"));
	}

	@Test
	void undoesTheGuardOfResultTable() throws Exception {
		Path file = folder.resolve("guard.csv");
		ResultTable.write(file, List.of("a", "b"), Stream.of(List.of("=SUM(A1)", "'=x")));
		FilledTable.Row row = FilledTable.read(file, List.of("a", "b")).get(0);
		assertEquals("=SUM(A1)", row.field("a"));
		assertEquals("'=x", row.field("b"));
	}

	@Test
	void saysWhereATableIsNone() {
		assertTrue(assertThrows(IntakeException.class, () -> read("a\n1\n")).getMessage()
				.contains("line 1: there is no column 'b'"));
		assertTrue(assertThrows(IntakeException.class, () -> read("a,b\n1,2,3\n")).getMessage()
				.contains("line 2: the row has 3 fields"));
		assertTrue(assertThrows(IntakeException.class, () -> read("")).getMessage().contains("empty"));
		assertThrows(IntakeException.class, () -> read("a,b\n1,\"open\n"));
		assertThrows(IntakeException.class, () -> FilledTable.read(folder.resolve("none.csv"), List.of()));
	}
}
