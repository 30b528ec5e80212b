package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class BinsTest {

	@Test
	void countsValuesBetweenMultiplesOfTheWidth() {
		Bins bins = Bins.of(new double[] { -71, -70, -69.9, -65, Double.NaN }, 2);
		assertEquals(4, bins.size());
		assertEquals(-72, bins.edge(0), 0);
		assertEquals(1, bins.count(0));
		assertEquals(2, bins.count(1));
		assertEquals(0, bins.count(2));
		assertEquals(1, bins.count(3));
		assertEquals(-64, bins.edge(4), 0);
		assertEquals(2, bins.most());
		assertEquals(4, bins.total());
	}

	@Test
	void nothingMakesNoBins() {
		assertEquals(0, Bins.of(new double[] { Double.NaN }, 1).size());
	}

	@Test
	void refusesWidthsThatMakeNoSense() {
		assertThrows(IllegalArgumentException.class, () -> Bins.of(new double[] { 1 }, 0));
		assertThrows(IllegalArgumentException.class, () -> Bins.of(new double[] { 0, 1e9 }, 1));
	}
}
