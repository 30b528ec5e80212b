package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RowsTest {

	private final Rows scrolled = new Rows(30, 20, 50, 130, 45);

	@Test
	void countsRowsThatShowInPart() {
		assertEquals(2, scrolled.first());
		assertEquals(8, scrolled.end());
		assertEquals(25, scrolled.top(2));
	}

	@Test
	void findsTheRowUnderThePointer() {
		assertEquals(-1, scrolled.at(29));
		assertEquals(2, scrolled.at(30));
		assertEquals(3, scrolled.at(45));
		assertEquals(-1, scrolled.at(130));
		assertEquals(-1, new Rows(30, 20, 2, 130, 0).at(80));
	}

	@Test
	void doesNotScrollPastTheEnds() {
		assertEquals(900, new Rows(30, 20, 50, 130, 5000).offset());
		assertEquals(0, new Rows(30, 20, 50, 130, -5).offset());
		assertEquals(0, new Rows(30, 20, 3, 130, 40).offset());
	}

	@Test
	void scrollsJustFarEnoughToShowARow() {
		assertEquals(45, scrolled.offsetFor(4));
		assertEquals(20, scrolled.offsetFor(1));
		assertEquals(120, scrolled.offsetFor(10));
	}
}
