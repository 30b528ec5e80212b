package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

class ContrastTest {

	private static final RGB WHITE = new RGB(255, 255, 255);
	private static final RGB BLACK = new RGB(0, 0, 0);

	@Test
	void agreesWithTheGuidelines() {
		// WCAG 2.1: ratios range from 1 to 21
		assertEquals(21, Contrast.ratio(BLACK, WHITE), 1e-9);
		assertEquals(1, Contrast.ratio(WHITE, WHITE), 1e-9);
		// 118 is known as the lightest grey that passes 4.5 on white; common practice
		assertTrue(Contrast.ratio(new RGB(118, 118, 118), WHITE) >= Contrast.TEXT);
		assertTrue(Contrast.ratio(new RGB(119, 119, 119), WHITE) < Contrast.TEXT);
	}

	@Test
	void textIsLightOnDark() {
		assertEquals(WHITE, Contrast.textOn(new RGB(40, 40, 60)));
		assertEquals(BLACK, Contrast.textOn(new RGB(240, 228, 66)));
	}

	@Test
	void textReadsOnEveryGrey() {
		for (int grey = 0; grey < 256; grey++) {
			RGB background = new RGB(grey, grey, grey);
			assertTrue(Contrast.ratio(Contrast.textOn(background), background) >= Contrast.TEXT, "on " + grey);
		}
	}

	@Test
	void rimsStandOutOnEveryGrey() {
		for (int grey = 0; grey < 256; grey += 5) {
			RGB background = new RGB(grey, grey, grey);
			for (Categorical colour : Categorical.values()) {
				RGB rim = Contrast.rim(colour.on(background), background);
				assertTrue(Contrast.ratio(rim, background) >= Contrast.SHAPE, colour + " on " + grey);
			}
		}
	}

	@Test
	void rimIsTheFillWhereThatStandsOut() {
		assertEquals(new RGB(0, 114, 178), Contrast.rim(new RGB(0, 114, 178), WHITE));
	}

	@Test
	void mixesInProportion() {
		assertEquals(new RGB(64, 25, 191), Contrast.between(new RGB(0, 0, 255), new RGB(255, 100, 0), 0.25));
	}
}
