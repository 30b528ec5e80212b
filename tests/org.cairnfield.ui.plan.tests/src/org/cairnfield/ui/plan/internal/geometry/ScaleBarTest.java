package org.cairnfield.ui.plan.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleBarTest {

	@ParameterizedTest
	@CsvSource({ "20, 5\u00a0m, 100", "30, 2\u00a0m, 60", "140, 1\u00a0m, 140", "141, 50\u00a0cm, 71",
			"2000, 5\u00a0cm, 100",
			"0.05, 2\u00a0km, 100", "1, 100\u00a0m, 100" })
	void isTheLongestRoundLengthThatFits(double pixelsPerMetre, String label, int pixels) {
		ScaleBar bar = ScaleBar.within(pixelsPerMetre, 140);
		assertEquals(label, bar.label());
		assertEquals(pixels, bar.pixels());
	}
}
