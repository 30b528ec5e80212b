package org.cairnfield.ui.charts.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AxisTest {

	@Test
	void headingNamesTheUnit() {
		assertEquals("Error (m)", Axis.linear("Error", "m").heading());
		assertEquals("Samples", Axis.linear("Samples", "").heading());
	}

	@Test
	void sharesAreShownInPerCent() {
		Axis axis = Axis.share("Samples");
		assertEquals("97.3\u00a0%", axis.text(0.973, 1));
		assertEquals(100, axis.scale(0.2, 0.7, 5).high(), 0);
	}

	@Test
	void followsTheDataOutToTheNextTick() {
		Scale scale = Axis.linear("Error", "m").between(0, Double.NaN).scale(1.3, 26.4, 7);
		assertEquals(0, scale.low(), 0);
		assertEquals(30, scale.high(), 1e-12);
	}

	@Test
	void endsThatAreGivenStay() {
		Scale scale = Axis.linear("Level", "dBm").between(-97, -33).scale(-80, -70, 5);
		assertEquals(-97, scale.low(), 0);
		assertEquals(-33, scale.high(), 0);
	}

	@Test
	void hasAScaleWithoutData() {
		assertEquals(0.5, Axis.linear("x", "").scale(Double.NaN, Double.NaN, 5).fraction(0.5), 1e-12);
		assertEquals(1, Axis.logarithmic("x", "").scale(Double.NaN, Double.NaN, 5).low(), 0);
	}
}
