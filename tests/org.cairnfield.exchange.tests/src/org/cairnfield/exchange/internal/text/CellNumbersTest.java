package org.cairnfield.exchange.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellNumbersTest {

	@Test
	void readsPointAndCommaOnlyWhereAsked() {
		assertEquals(12.5, CellNumbers.parse(" 12.5 ", false));
		assertEquals(12.5, CellNumbers.parse("12,5", true));
		assertTrue(Double.isNaN(CellNumbers.parse("12,5", false)));
		assertTrue(Double.isNaN(CellNumbers.parse("12.5", true)));
		assertEquals(-1500, CellNumbers.parse("-1.5e3", false));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", " ", "NaN", "Infinity", "-Infinity", "1e999", "0x10", "1d", "1f", "e5", "--1", "1.2.3",
			"-", "1 2", "\u0661" })
	void takesNothingElseForANumber(String text) {
		assertTrue(Double.isNaN(CellNumbers.parse(text, false)));
	}

	@Test
	void readsShortWholeNumbersQuickly() {
		assertEquals(-67, CellNumbers.level("-67"));
		assertEquals(0, CellNumbers.level("0"));
		assertEquals(CellNumbers.BLANK, CellNumbers.level(""));
		assertEquals(CellNumbers.BLANK, CellNumbers.level("      "));
		assertEquals(CellNumbers.OTHER, CellNumbers.level("-67.0"));
		assertEquals(CellNumbers.OTHER, CellNumbers.level("-"));
		assertEquals(CellNumbers.OTHER, CellNumbers.level("99999"));
	}

	@Test
	void writesAPointUnderAGermanLocale() {
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.GERMANY);
			assertEquals("1.5", CellNumbers.plain(1.5));
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void writesWhatReadsBackEqualWithoutExponent() {
		for (double value : new double[] { 0.1, 1e-7, 12, -0.0, 1e17, 858.645, Math.PI, 123456789.123 }) {
			String text = CellNumbers.plain(value);
			assertEquals(value, Double.parseDouble(text));
			assertTrue(text.indexOf('E') < 0, text);
		}
		assertEquals("12", CellNumbers.plain(12.0));
	}
}
