package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MarkerTest {

	@ParameterizedTest
	@EnumSource
	void areOfLikeSizeAndCentred(Marker marker) {
		double[] outline = marker.outline();
		double twiceArea = 0;
		double sumX = 0;
		for (int i = 0; i < outline.length; i += 2) {
			int next = (i + 2) % outline.length;
			twiceArea += outline[i] * outline[next + 1] - outline[next] * outline[i + 1];
			sumX += outline[i];
		}
		double area = Math.abs(twiceArea) / 2;
		assertTrue(area > 1 && area < 3, "area " + area);
		assertEquals(0, sumX, 1e-9);
	}
}
