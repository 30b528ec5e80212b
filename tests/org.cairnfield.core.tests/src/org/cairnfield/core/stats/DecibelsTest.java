package org.cairnfield.core.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DecibelsTest {

	@Test
	void tellsTheMeanLevelFromTheMeanPower() {
		double[] levelsDbm = { -60, -70 };
		assertEquals(-65, Decibels.meanOfLevelsDbm(levelsDbm), 0);
		// 10·log10((1e-6 + 1e-7) / 2)
		assertEquals(-62.596373, Decibels.meanOfPowersDbm(levelsDbm), 1e-6);
	}

	@Test
	void agreesWithItselfWhereLevelsAreEqual() {
		double[] levelsDbm = { -71, -71, -71 };
		assertEquals(-71, Decibels.meanOfPowersDbm(levelsDbm), 1e-12);
		assertEquals(-71, Decibels.meanOfLevelsDbm(levelsDbm), 1e-12);
	}

	@Test
	void saysNaNForNone() {
		assertEquals(Double.NaN, Decibels.meanOfLevelsDbm(new double[0]));
		assertEquals(Double.NaN, Decibels.meanOfPowersDbm(new double[0]));
	}
}
