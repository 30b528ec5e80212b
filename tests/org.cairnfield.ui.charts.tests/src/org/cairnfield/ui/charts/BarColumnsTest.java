package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BarColumnsTest {

	@Test
	void columnsShareTheWidthBesideTheLabels() {
		BarColumns columns = BarColumns.fit(500, 80, 50, 5, 2);
		assertEquals(90, columns.bar(0));
		assertEquals(295, columns.bar(1));
		assertEquals(140, columns.barWidth());
	}

	@Test
	void labelsGetAThirdAtMost() {
		assertEquals(5 + 100 + 5, BarColumns.fit(300, 900, 50, 5, 1).bar(0));
	}

	@Test
	void narrowColumnsDropTheValues() {
		BarColumns columns = BarColumns.fit(300, 50, 50, 5, 4);
		assertEquals(0, columns.valueWidth());
		assertTrue(columns.barWidth() > 40);
	}

	@Test
	void aBarIsNeverTooShortToBeSeen() {
		BarColumns columns = BarColumns.fit(500, 80, 50, 5, 2);
		assertEquals(1, columns.length(0));
		assertEquals(70, columns.length(0.5));
		assertEquals(140, columns.length(1));
	}
}
