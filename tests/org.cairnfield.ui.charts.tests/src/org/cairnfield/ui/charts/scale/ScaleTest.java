package org.cairnfield.ui.charts.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ScaleTest {

	@Test
	void linearFractionsAreProportional() {
		Scale scale = Scale.linear(-100, -40);
		assertEquals(0, scale.fraction(-100), 1e-12);
		assertEquals(0.5, scale.fraction(-70), 1e-12);
		assertEquals(-70, scale.value(0.5), 1e-12);
		assertEquals(1.5, scale.fraction(-10), 1e-12);
		assertEquals(1, scale.clamped(-10), 0);
	}

	@Test
	void logarithmicScalePutsTheGeometricMeanInTheMiddle() {
		Scale scale = Scale.logarithmic(1, 10_000);
		assertEquals(0.5, scale.fraction(100), 1e-12);
		assertEquals(100, scale.value(0.5), 1e-9);
		assertTrue(Double.isNaN(scale.fraction(0)));
	}

	@Test
	void oneValueIsWidened() {
		assertEquals(0.5, Scale.linear(7, 7).fraction(7), 1e-12);
		assertEquals(0.5, Scale.linear(0, 0).fraction(0), 1e-12);
		assertEquals(0.5, Scale.logarithmic(5, 5).fraction(5), 1e-12);
	}

	@Test
	void widenedScaleEndsAtTicks() {
		Scale scale = Scale.linear(3, 97).widened(6);
		assertEquals(0, scale.low(), 1e-12);
		assertEquals(100, scale.high(), 1e-12);
		assertEquals(100, Scale.linear(0, 100).widened(6).high(), 1e-12);
	}

	@Test
	void widenedScaleEndsAtTicksOfItsOwn() {
		// steps of 10 would do for the data, but not for 0 to 90
		Scale scale = Scale.linear(4.4, 88).widened(8);
		Ticks ticks = scale.ticks(8);
		assertEquals(scale.low(), ticks.value(0), 1e-12);
		assertEquals(scale.high(), ticks.value(ticks.size() - 1), 1e-12);
	}

	@Test
	void refusesWhatIsNoRange() {
		assertThrows(IllegalArgumentException.class, () -> Scale.linear(2, 1));
		assertThrows(IllegalArgumentException.class, () -> Scale.linear(0, Double.NaN));
		assertThrows(IllegalArgumentException.class, () -> Scale.logarithmic(0, 1));
	}
}
