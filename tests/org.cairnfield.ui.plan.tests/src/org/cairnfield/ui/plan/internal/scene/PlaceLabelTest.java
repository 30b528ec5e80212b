package org.cairnfield.ui.plan.internal.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PlaceLabelTest {

	@Test
	void showsNamesWholeAndAddressesByTheirEnd() {
		assertEquals("MAC228", PlaceLabel.of("MAC228"));
		assertEquals("53:2D", PlaceLabel.of("00:00:5E:00:53:2D"));
		assertEquals("quay-entrance1", PlaceLabel.of("quay-entrance1"));
		assertEquals("…ay-entrance12", PlaceLabel.of("quay-entrance12"));
	}
}
