package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

class LabTest {

	@Test
	void agreesWithCommonValues() {
		// the sRGB primaries under D65; values from memory, common practice
		assertLab(53.24, 80.09, 67.20, new RGB(255, 0, 0));
		assertLab(87.73, -86.18, 83.18, new RGB(0, 255, 0));
		assertLab(32.30, 79.19, -107.86, new RGB(0, 0, 255));
		assertLab(100, 0, 0, new RGB(255, 255, 255));
		assertLab(0, 0, 0, new RGB(0, 0, 0));
	}

	private static void assertLab(double lightness, double a, double b, RGB rgb) {
		Lab lab = Lab.of(rgb);
		assertEquals(lightness, lab.lightness(), 0.05, rgb.toString());
		assertEquals(a, lab.a(), 0.05, rgb.toString());
		assertEquals(b, lab.b(), 0.05, rgb.toString());
	}

	@Test
	void comesBackToTheSameTriple() {
		Random random = new Random(1);
		for (int i = 0; i < 500; i++) {
			RGB rgb = new RGB(random.nextInt(256), random.nextInt(256), random.nextInt(256));
			assertEquals(rgb, Lab.of(rgb).rgb());
		}
	}

	@Test
	void knowsWhatCannotBeShown() {
		assertTrue(new Lab(50, 0, 0).isShowable());
		assertFalse(new Lab(50, -120, 0).isShowable());
	}

	@Test
	void anotherLightnessStaysShowable() {
		Lab moved = Lab.of(new RGB(240, 228, 66)).atLightness(30);
		assertEquals(30, moved.lightness(), 0);
		assertTrue(moved.isShowable());
		assertTrue(moved.b() > 0, "still yellowish");
	}
}
