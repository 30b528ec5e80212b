package org.cairnfield.archive.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EscapesTest {

	@Test
	void escapesWhatALineCannotHold() {
		assertEquals("a\\tb\\nc\\rd\\\\e", Escapes.escape("a\tb\nc\rd\\e"));
		assertEquals("\\u0000\\u001b\\u007f\\u0085\\u2028", Escapes.escape("\u0000\u001b\u007f\u0085\u2028"));
		assertEquals("\\ud83dx", Escapes.escape("\ud83dx"), "half a pair");
	}

	@Test
	void leavesOrdinaryTextAlone() {
		String text = "Sailmakers' Hall, Größe \ud83d\ude00 <&>";
		assertEquals(text, Escapes.escape(text));
	}

	@Test
	void givesAnyTextBackThroughUtf8() {
		Random random = new Random(1);
		for (int i = 0; i < 20_000; i++) {
			char[] chars = new char[random.nextInt(12)];
			for (int k = 0; k < chars.length; k++) {
				chars[k] = (char) (random.nextInt(3) == 0 ? random.nextInt(0x10000) : random.nextInt(0xa1));
			}
			String text = new String(chars);
			String escaped = Escapes.escape(text);
			assertTrue(escaped.chars().noneMatch(c -> c < ' '), escaped);
			byte[] bytes = escaped.getBytes(StandardCharsets.UTF_8);
			assertEquals(text, Escapes.unescape(new String(bytes, StandardCharsets.UTF_8)));
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "\\", "a\\", "\\x", "\\u", "\\u12", "\\u12g4", "\\U0041" })
	void refusesABackslashThatBeginsNoEscape(String text) {
		assertThrows(IllegalArgumentException.class, () -> Escapes.unescape(text));
	}

	@ParameterizedTest
	@CsvSource({ "\\u0041,A", "\\u00e4,ä", "\\\\u0041,\\u0041" })
	void readsEscapes(String escaped, String text) {
		assertEquals(text, Escapes.unescape(escaped));
	}
}
