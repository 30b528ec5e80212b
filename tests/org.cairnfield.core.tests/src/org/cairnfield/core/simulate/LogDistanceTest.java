package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LogDistanceTest {

	// Worked out from PL(d) = PL(1 m) + 10 n log10 d.
	@Test
	void addsByDecadeOfDistance() {
		LogDistance law = new LogDistance(40.1871, 3);
		assertEquals(40.1871, law.lossDb(1), 1e-4);
		assertEquals(49.2180, law.lossDb(2), 1e-4);
		assertEquals(70.1871, law.lossDb(10), 1e-4);
		assertEquals(79.2180, law.lossDb(20), 1e-4);
	}

	// -40 dBm at 1 m and n = 2.7, with levels taken for negative losses.
	@Test
	void givesLevelAndDistanceBack() {
		LogDistance law = new LogDistance(40, 2.7);
		assertEquals(64.383430, law.lossDb(8), 1e-6);
		assertEquals(10.000000, law.metresAt(67), 1e-6);
	}

	// Least squares worked out by hand for invented levels at 1, 2, 4, 8, 16 m.
	@Test
	void fitsMeasurements() {
		LogDistance.Fit fit = LogDistance.fit(new double[] { 1, 2, 4, 8, 16 }, new double[] { 40, 49, 58, 66, 77 });
		assertEquals(39.80, fit.law().atOneMetreDb(), 1e-9);
		assertEquals(3.02295455, fit.law().exponent(), 1e-7);
		assertEquals(0.998854766, fit.correlation(), 1e-9);
		assertEquals(0.795822, fit.residualSdDb(), 1e-6);
		assertThrows(IllegalArgumentException.class, () -> LogDistance.fit(new double[2], new double[2]));
	}
}
