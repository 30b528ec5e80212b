package org.cairnfield.core.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class SeriesTest {

	@Test
	void doesNotChangeWithTheArraysItWasMadeOf() {
		double[] x = { 1, 2 };
		double[] y = { 3, 4 };
		Series series = new Series("a", x, y);
		x[0] = 9;
		series.ys()[1] = 9;
		assertEquals(1, series.x(0), 0);
		assertEquals(4, series.y(1), 0);
	}

	@Test
	void barsKeepAValueForEachGroupAndPlace() {
		Bars bars = new Bars(List.of("C1", "C2"), List.of("before", "after"), new double[] { 5, 3 },
				new double[] { 6, 4 });
		assertEquals(2, bars.size());
		assertEquals(4, bars.value(1, 1), 0);
		assertEquals(List.of("before", "after"), bars.groups());
	}

	@Test
	void refusesShapesThatDoNotAgree() {
		assertThrows(IllegalArgumentException.class, () -> new Series("a", new double[1], new double[2]));
		assertThrows(IllegalArgumentException.class,
				() -> new Bars(List.of("C1"), List.of("before", "after"), new double[1]));
		assertThrows(IllegalArgumentException.class, () -> new Bars(List.of("C1"), List.of("before"), new double[2]));
	}
}
