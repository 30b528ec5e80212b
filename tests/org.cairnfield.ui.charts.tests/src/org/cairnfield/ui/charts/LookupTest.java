package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.series.Series;
import org.junit.jupiter.api.Test;

class LookupTest {

	private final Series series = new Series("s", new double[] { 0, 4, 4, 10 }, new double[] { 0, 0.2, 0.5, 1 });

	@Test
	void takesTheNearestPoint() {
		assertEquals(3, Lookup.at(series, 8, false));
		assertEquals(0, Lookup.at(series, 1, false));
	}

	@Test
	void aStepHoldsUntilTheNextPoint() {
		assertEquals(2, Lookup.at(series, 8, true));
		assertEquals(2, Lookup.at(series, 4, true));
		assertEquals(-1, Lookup.at(series, -1, true));
	}

	@Test
	void spanLeavesOutWhatCannotBeDrawn() {
		Span span = new Span(true);
		assertTrue(Double.isNaN(span.low()));
		for (double value : new double[] { -1, 0, Double.NaN, 3, 0.5, Double.POSITIVE_INFINITY }) {
			span.add(value);
		}
		assertEquals(0.5, span.low(), 0);
		assertEquals(3, span.high(), 0);
	}
}
