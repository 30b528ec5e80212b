package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The simulation is worth something only if it does what the paper says of it. */
class DichromatTest {

	@ParameterizedTest
	@EnumSource
	void leavesWhiteAndGreysAsTheyAre(Dichromat person) {
		assertEquals(new RGB(255, 255, 255), person.sees(new RGB(255, 255, 255)));
		RGB grey = person.sees(new RGB(128, 128, 128));
		assertEquals(grey.red, grey.green);
		assertEquals(128, grey.blue, 2);
	}

	@ParameterizedTest
	@EnumSource
	void losesTheDifferenceBetweenRedAndGreen(Dichromat person) {
		RGB red = person.sees(new RGB(255, 0, 0));
		RGB green = person.sees(new RGB(0, 255, 0));
		assertEquals(red.red, red.green, 1);
		assertEquals(green.red, green.green, 1);
		assertTrue(Lab.of(red)
				.difference(Lab.of(green)) < Lab.of(new RGB(255, 0, 0)).difference(Lab.of(new RGB(0, 255, 0))) / 2);
	}
}
