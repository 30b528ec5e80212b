package org.cairnfield.archive.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {

	private static String text(double number) throws IOException {
		return Lines.written(line -> line.decimal(number));
	}

	private static double parsed(String text) {
		byte[] bytes = Lines.ascii(text);
		return Decimals.parse(bytes, 0, bytes.length);
	}

	@ParameterizedTest
	@CsvSource({ "0,0", "12.4,12.4", "7.85,7.85", "-0.5,-0.5", "100,100", "0.1,0.1", "1e-3,0.001",
			"123456789.25,123456789.25",
			"0.000000001,0.000000001", "2e-3,0.002", "1e15,1000000000000000", "-33.25,-33.25" })
	void writesPlainDecimalsAsShortAsTheyCanBe(double number, String text) throws IOException {
		assertEquals(text, text(number));
	}

	@Test
	void writesAnExponentWhereDigitsWouldBeMany() throws IOException {
		assertEquals("2E+23", text(2e23));
		assertEquals("1.5E-12", text(1.5e-12));
	}

	@Test
	void givesEveryNumberBack() throws IOException {
		Random random = new Random(1);
		for (int i = 0; i < 30_000; i++) {
			double number = switch (i % 4) {
			case 0 -> Double.longBitsToDouble(random.nextLong());
			case 1 -> random.nextInt(1_000_000) / 100.0;
			case 2 -> random.nextGaussian() * Math.pow(10, random.nextInt(30) - 15);
			default -> random.nextLong() / 1000.0;
			};
			if (Double.isFinite(number)) {
				String text = text(number);
				assertEquals(number + 0.0, parsed(text), text);
				assertEquals(number + 0.0, Double.parseDouble(text) + 0.0, "any reader gives the same");
			}
		}
	}

	@Test
	void readsAsJavaDoes() {
		Random random = new Random(2);
		for (int i = 0; i < 30_000; i++) {
			StringBuilder text = new StringBuilder(random.nextBoolean() ? "-" : "");
			text.append(random.nextInt(10));
			for (int k = random.nextInt(9); k > 0; k--) {
				text.append(random.nextInt(10));
			}
			text.append('.');
			for (int k = random.nextInt(14); k >= 0; k--) {
				text.append(random.nextInt(10));
			}
			assertEquals(Double.parseDouble(text.toString()) + 0.0, parsed(text.toString()), text::toString);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "-", ".", "1.", ".5x", "NaN", "Infinity", "0x10", "1f", "1d", " 1", "1,5", "1e5000",
			"--1", "1.2.3", "\u0661" })
	void knowsWhatIsNoNumber(String text) {
		double number = parsed(text);
		assertTrue(Double.isNaN(number) || text.equals("1.") && number == 1, text + " -> " + number);
	}
}
