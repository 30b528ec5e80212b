package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ContinuousTest {

	private static final Continuous RAMP = Continuous.rising();

	@Test
	void lightnessRisesAllTheWay() {
		for (int i = 1; i <= 64; i++) {
			assertTrue(lab(i / 64.0).lightness() > lab((i - 1) / 64.0).lightness(), "at " + i);
		}
	}

	@Test
	void equalStepsAreEqualDifferences() {
		double whole = 0;
		double least = Double.MAX_VALUE;
		double most = 0;
		for (int i = 1; i <= 16; i++) {
			double step = lab(i / 16.0).difference(lab((i - 1) / 16.0));
			whole += step;
			least = Math.min(least, step);
			most = Math.max(most, step);
		}
		double mean = whole / 16;
		assertTrue(least > 0.85 * mean && most < 1.15 * mean, least + " to " + most + " around " + mean);
		assertTrue(whole > 120, "the ramp spans " + whole);
	}

	@Test
	void everyColourOfTheCurveCanBeShown() {
		for (int i = 0; i <= 1000; i++) {
			assertTrue(Continuous.at(i / 1000.0).isShowable(), "at " + i);
		}
	}

	@ParameterizedTest
	@EnumSource
	void dichromatsSeeEveryStepToo(Dichromat person) {
		for (int i = 1; i <= 16; i++) {
			Lab before = Lab.of(person.sees(RAMP.rgb((i - 1) / 16.0)));
			Lab after = Lab.of(person.sees(RAMP.rgb(i / 16.0)));
			assertTrue(after.lightness() > before.lightness(), "lightness at " + i);
			assertTrue(after.difference(before) > 5, "step " + i);
		}
	}

	@Test
	void textReadsOnEveryColour() {
		for (int i = 0; i <= 255; i++) {
			RGB rgb = RAMP.rgb(i / 255.0);
			assertTrue(Contrast.ratio(Contrast.textOn(rgb), rgb) >= Contrast.TEXT, "at " + i);
		}
	}

	@Test
	void fallingIsTheOtherWayRound() {
		assertEquals(RAMP.rgb(0.25), Continuous.falling().rgb(0.75));
		assertEquals(RAMP.rgb(1), Continuous.falling().rgb(-3));
	}

	@Test
	void whatHasNoValueHasNoColour() {
		assertThrows(IllegalArgumentException.class, () -> RAMP.rgb(Double.NaN));
	}

	@Test
	void handsOutCopies() {
		RAMP.rgb(0.5).red = 255;
		assertTrue(RAMP.rgb(0.5).red < 255);
	}

	private static Lab lab(double fraction) {
		return Lab.of(RAMP.rgb(fraction));
	}
}
