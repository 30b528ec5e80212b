package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.gzip;
import static org.cairnfield.exchange.Surveys.preview;
import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DialectTest {

	private static final String TEXT = "x,y,floor,building,AP1\n1.5,2.5,0,Zeughaus Süd,-60\n2.5,3.5,1,Zeughaus Süd,\n";

	@TempDir
	Path folder;

	@ParameterizedTest
	@CsvSource({ "';',semicolon", "'\t',tab", "',',comma" })
	void findsTheSeparator(String separator, String word) throws IntakeException {
		Path f = file(folder, "a.csv", TEXT.replace(",", separator));
		assertEquals(word, preview(f).guess("separator").orElseThrow().value());
		assertEquals("Zeughaus Süd 0 (1.5, 2.5) AP1:-60", sample(read(f).map(), 0));
	}

	@ParameterizedTest
	@CsvSource({ "';'", "'\t'" })
	void findsTheDecimalComma(String separator) throws IntakeException {
		Path f = file(folder, "a.csv", TEXT.replace(",", separator).replace('.', ',').replace("-60", "-60,4"));
		assertEquals("comma", preview(f).guess("decimal mark").orElseThrow().value());
		assertEquals("Zeughaus Süd 0 (1.5, 2.5) AP1:-60", sample(read(f).map(), 0));
	}

	@Test
	void cutsHeaderlessDecimalsAtTheSemicolon() throws IntakeException {
		Path f = file(folder, "a.csv", "12,5;7,3;-60,1\n12,6;7,4;-61,2\n");
		Intake in = read(IntakeOptions.GUESS.withRole("#1", ColumnRole.X).withRole("#2", ColumnRole.Y), f);
		assertEquals("a 0 (12.5, 7.3) AP1:-60", sample(in.map(), 0));
	}

	static Stream<Charset> charsets() {
		return Stream.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1);
	}

	@ParameterizedTest
	@MethodSource("charsets")
	void findsTheCharacterSet(Charset charset) throws IntakeException {
		Path f = file(folder, "a.csv", TEXT.getBytes(charset));
		assertEquals("Zeughaus Süd", read(f).map().sites().get(0));
		assertEquals(charset.name(), preview(f).guess("character set").orElseThrow().value());
	}

	@ParameterizedTest
	@CsvSource({ "UTF-8", "UTF-16LE", "UTF-16BE" })
	void readsPastAByteOrderMark(Charset charset) throws IntakeException {
		Path f = file(folder, "a.csv", ("\uFEFF" + TEXT).getBytes(charset));
		assertEquals("Zeughaus Süd 0 (1.5, 2.5) AP1:-60", sample(read(f).map(), 0));
		assertEquals("x", preview(f).columns().get(0).name());
	}

	@Test
	void turnsToLatin1WhereUtf8EndsOnlyFurtherDown() throws IntakeException {
		StringBuilder text = new StringBuilder("x,y,floor,building,AP1\n");
		for (int i = 0; i < 80_000; i++) {
			text.append("1.5,2.5,0,Hall,-60\n");
		}
		text.append("1.5,2.5,0,Süd,-60\n");
		Path f = file(folder, "a.csv", text.toString().getBytes(StandardCharsets.ISO_8859_1));
		assertEquals("Süd", read(f).map().sites().get(1));
		IntakeException e = assertThrows(IntakeException.class,
				() -> read(IntakeOptions.GUESS.withCharset(StandardCharsets.UTF_8), f));
		assertTrue(e.remedy().contains("character set"), e.getMessage());
	}

	@Test
	void knowsGzipByItsBytesAndNotByItsName() throws IntakeException {
		Path zipped = file(folder, "a.csv", gzip(TEXT.getBytes(StandardCharsets.UTF_8)));
		assertEquals(2, read(zipped).map().size());
		Path plain = file(folder, "b.csv.gz", TEXT);
		assertEquals(2, read(plain).map().size());
	}
}
