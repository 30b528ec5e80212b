package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks of any length hold the rows that a general parser of CSV reads from the whole text. */
class BlocksTest {

	private static final String[] PIECES = { "a", "-61", "100", "\"", "\"\"", ",", ",", ",", "\n", "\n", "\r\n", "\r",
			" ", "ö", "長", "\"x\"", "🗺" };

	@TempDir
	Path folder;

	/** Rows as text: line, lines, fields, and the row as it stands; the last may be a problem. */
	private static List<String> expected(String text, char separator) throws IOException {
		CSVFormat format = CSVFormat.Builder.create().setDelimiter(separator).setQuote('"').setIgnoreEmptyLines(false)
				.setTrailingData(true).get();
		List<String> rows = new ArrayList<>();
		try (CSVParser parser = CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
			Iterator<CSVRecord> records = parser.iterator();
			while (true) {
				long before = parser.getCurrentLineNumber();
				CSVRecord record;
				try {
					if (!records.hasNext()) {
						return rows;
					}
					record = records.next();
				} catch (UncheckedIOException e) {
					rows.add("unclosed " + (before + 1));
					return rows;
				}
				long lines = Math.max(1, parser.getCurrentLineNumber() - before);
				if (record.size() > 1 || !record.get(0).isBlank()) {
					rows.add(before + 1 + " " + lines + " " + record.toList() + " "
							+ raw(text, (int) record.getCharacterPosition(), lines));
				}
			}
		}
	}

	private static String raw(String text, int from, long lines) {
		int at = from;
		for (long left = lines; at < text.length(); at++) {
			char c = text.charAt(at);
			if (c == '\n' || c == '\r') {
				if (--left == 0) {
					break;
				}
				at += c == '\r' && text.startsWith("\n", at + 1) ? 1 : 0;
			}
		}
		return text.substring(from, at);
	}

	private List<String> found(Path file, char separator, Charset charset, int blockBytes) {
		List<String> found = new ArrayList<>();
		Dialect dialect = new Dialect(charset, 0, separator, false, false);
		try (Blocks blocks = new Blocks(file, dialect, Limits.usual(), blockBytes)) {
			for (Block block = blocks.next(); block != null; block = blocks.next()) {
				BlockRows rows = block.rows();
				while (rows.next()) {
					List<String> fields = new ArrayList<>();
					for (int i = 0; i < rows.size(); i++) {
						fields.add(rows.get(i));
					}
					found.add(rows.line() + " " + rows.lines() + " " + fields + " " + rows.raw());
				}
			}
		} catch (IntakeException e) {
			found.add("unclosed " + e.line());
		}
		return found;
	}

	@Test
	void holdTheRowsThatAParserOfTheWholeTextReads() throws IOException {
		Random random = new Random(20_261_129);
		for (int round = 0; round < 3000; round++) {
			StringBuilder text = new StringBuilder();
			boolean quotes = random.nextBoolean();
			for (int n = random.nextInt(60); n >= 0; n--) {
				String piece = PIECES[random.nextInt(PIECES.length)];
				text.append(quotes || piece.indexOf('"') < 0 ? piece : "q");
			}
			char separator = random.nextInt(9) == 0 ? 'ö' : ',';
			Path file = file(folder, "t.csv", text.toString());
			int blockBytes = 1 + random.nextInt(40);
			assertEquals(expected(text.toString(), separator),
					found(file, separator, StandardCharsets.UTF_8, blockBytes),
					() -> "in blocks of " + blockBytes + ": " + text);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "UTF-16LE", "UTF-16BE", "ISO-8859-15", "windows-1252" })
	void areTheSameInAnyCharacterSet(String name) throws IOException {
		Charset charset = Charset.forName(name);
		String text = "höher,\"a\"\"ß\r\nb\"\n\n€,-61\r".repeat(3000) + "end";
		assertEquals(expected(text, ','), found(file(folder, "t.csv", text.getBytes(charset)), ',', charset, 100));
	}

	@Test
	void areAsManyRowsAsAskedFor() throws IntakeException {
		Path file = file(folder, "t.csv", "\n1\n\n\"2\n\"\n3\n\n4\n5");
		try (Blocks blocks = new Blocks(file, new Dialect(StandardCharsets.UTF_8, 0, ',', false, false), Limits.usual(),
				4)) {
			assertEquals(2, blocks.next(2).count());
			Block next = blocks.next(2);
			assertEquals(2, next.count());
			assertEquals(6, next.line());
			assertEquals(1, blocks.next(2).count());
			assertEquals(null, blocks.next(2));
		}
	}

	@Test
	void nameTheLineWithBytesThatAreNoCharacters() {
		byte[] bytes = "a,b\nc,d\ne,?\nf,g\n".getBytes(StandardCharsets.UTF_8);
		bytes[10] = (byte) 0xff;
		assertEquals(List.of("1 1 [a, b] a,b", "2 1 [c, d] c,d", "unclosed 3"),
				found(file(folder, "t.csv", bytes), ',', StandardCharsets.UTF_8, 1000));
	}
}
