package org.cairnfield.ui.charts.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;

import org.junit.jupiter.api.Test;

class ShownNumbersTest {

	@Test
	void writesARealMinusAndASpaceThatDoesNotBreak() {
		assertEquals("\u221270\u00a0dBm", ShownNumbers.text(-70, 0, "dBm"));
		assertEquals("0.94", ShownNumbers.text(0.94, 2, ""));
	}

	@Test
	void zeroHasNoSign() {
		assertEquals("0.0", ShownNumbers.text(-0.04, 1));
		assertEquals("\u22120.1", ShownNumbers.text(-0.06, 1));
	}

	@Test
	void separatesThousands() {
		assertEquals("999", ShownNumbers.text(999, 0));
		assertEquals("20,000.5", ShownNumbers.text(20_000.5, 1));
	}

	@Test
	void isTheSameInEveryLocale() {
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.GERMANY);
			assertEquals("1,234.5", ShownNumbers.text(1234.5, 1));
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void whatIsNoNumberIsADash() {
		assertEquals("\u2013\u00a0m", ShownNumbers.text(Double.NaN, 1, "m"));
		assertEquals("\u2212\u221e", ShownNumbers.text(Double.NEGATIVE_INFINITY, 1));
	}
}
