package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class FlowTest {

	@Test
	void breaksWhereTheNextDoesNotFit() {
		Flow flow = new Flow(List.of(40, 40, 40), 10, 100);
		assertEquals(50, flow.x(1));
		assertEquals(0, flow.line(1));
		assertEquals(0, flow.x(2));
		assertEquals(1, flow.line(2));
		assertEquals(2, flow.lines());
	}

	@Test
	void whatIsTooWideHasALineOfItsOwn() {
		Flow flow = new Flow(List.of(500, 20), 10, 100);
		assertEquals(0, flow.line(0));
		assertEquals(1, flow.line(1));
	}

	@Test
	void nothingTakesNoLine() {
		assertEquals(0, new Flow(List.of(), 10, 100).lines());
	}
}
