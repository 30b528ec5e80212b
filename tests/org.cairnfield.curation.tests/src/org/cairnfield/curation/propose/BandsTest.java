package org.cairnfield.curation.propose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandsTest {

	@Test
	void findsTheBandOfAStrength() {
		Bands bands = Bands.parse("far off 0.1; near 0.5; next door 0.8");
		assertTrue(bands.of(0.05).isEmpty());
		assertEquals("far off", bands.of(0.1).get().name());
		assertEquals("far off", bands.of(0.4999).get().name());
		assertEquals("near", bands.of(0.5).get().name());
		assertEquals("next door", bands.of(1).get().name());
		assertEquals("next door", bands.named("Next Door").get().name());
	}

	@Test
	void survivesItsTextForm() {
		assertEquals(Bands.USUAL, Bands.parse(Bands.USUAL.toString()));
		assertEquals("near (r from 0.5 to below 0.8)", Bands.parse("near 0.5; close 0.8").all().get(0).title());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "near", "near many", "near 1.5", "near 0.5; close 0.5", "near 0.5; Near 0.8" })
	void refusesTextsThatNameNoBands(String text) {
		assertThrows(IllegalArgumentException.class, () -> Bands.parse(text));
	}
}
