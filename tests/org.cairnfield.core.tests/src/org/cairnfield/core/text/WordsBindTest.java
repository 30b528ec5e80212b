package org.cairnfield.core.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.text.MessageFormat;
import java.util.Locale;

import org.junit.jupiter.api.Test;

/** The form is that of {@link MessageFormat}, without its formats of numbers. */
class WordsBindTest {

	@Test
	void putsValuesInTheirPlaces() {
		for (String text : new String[] { "{0} of {1}", "{1}, then {0}", "no value", "it''s {0}", "'{0}' is {1}",
				"''{0}''",
				"{0}{0}" }) {
			assertEquals(new MessageFormat(text, Locale.ROOT).format(new Object[] { "a", "b" }),
					Words.bind(text, "a", "b"));
		}
	}

	@Test
	void writesNumbersAsTheyAre() {
		assertEquals("21205 samples, 0.5 m, null", Words.bind("{0} samples, {1} m, {2}", 21205, 0.5, null));
	}

	@Test
	void refusesAPlaceWithoutAValue() {
		assertThrows(IndexOutOfBoundsException.class, () -> Words.bind("{0} {1}", "one"));
	}
}
