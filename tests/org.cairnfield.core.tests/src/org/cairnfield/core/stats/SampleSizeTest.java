package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SampleSizeTest {

	@Test
	void agreesWithTheUsualFigures() {
		// Share of one half at 95 %: common practice.
		assertEquals(385, SampleSize.forShare(0.05, 0.95));
		assertEquals(97, SampleSize.forShare(0.10, 0.95));
		assertEquals(278, SampleSize.forShare(0.05, 0.95, 1000));
	}

	@Test
	void neverAsksForMoreThanThereIs() {
		assertEquals(7, SampleSize.forShare(0.01, 0.99, 7));
	}

	@Test
	void refusesWhatCannotBe() {
		assertThrows(IllegalArgumentException.class, () -> SampleSize.forShare(0, 0.95));
		assertThrows(IllegalArgumentException.class, () -> SampleSize.forShare(0.05, 0));
	}
}
