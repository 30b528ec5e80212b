package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.ui.charts.scale.Axis;
import org.junit.jupiter.api.Test;

class FrameTest {

	private static final Frame.Measures MEASURES = new Frame.Measures(600, 400, 16, 5, 8, 32);

	private final Frame frame = Frame.fit(MEASURES, Axis.linear("Error", "m"), Axis.share("Samples"),
			new Frame.Extent(0, 26.3, 0, 1));

	@Test
	void leavesRoomForLegendHeadingsAndLabels() {
		assertTrue(frame.plot().y >= 32 + 16, "legend and heading above");
		assertTrue(400 - (frame.plot().y + frame.plot().height) >= 2 * 16, "labels and heading below");
		assertTrue(frame.plot().x >= 3 * 8, "labels on the left");
	}

	@Test
	void placesAreInverseToValues() {
		assertEquals(frame.plot().x, frame.xOf(0), 1e-9);
		assertEquals(frame.plot().y, frame.yOf(100), 1e-9);
		assertEquals(12.5, frame.xAt(frame.xOf(12.5)), 1e-9);
		assertEquals(62.5, frame.yAt(frame.yOf(62.5)), 1e-9);
		assertEquals(0, frame.xAt(-1000), 1e-9);
	}

	@Test
	void labelsAlongXDoNotTouch() {
		for (int width = 80; width < 1200; width += 37) {
			Frame narrow = Frame.fit(new Frame.Measures(width, 300, 16, 5, 8, 0), Axis.linear("Rank", ""),
					Axis.linear("Distance", "dB"), new Frame.Extent(0, 20_000, 3, 90));
			for (int t = 1; t < narrow.xTicks().size(); t++) {
				double apart = narrow.xOf(narrow.xTicks().value(t)) - narrow.xOf(narrow.xTicks().value(t - 1));
				assertTrue(narrow.xTicks().size() <= 2 || apart > narrow.xTicks().label(t).length() * 8,
						"at width " + width);
			}
		}
	}

	@Test
	void aGuideMovesByAPixelAndIsRounded() {
		double moved = frame.moved(false, 50, 1);
		assertTrue(moved > 50 && moved < 51, "moved to " + moved);
		assertEquals(Math.rint(moved * 10) / 10, moved, 1e-9);
		assertTrue(frame.moved(false, 50, -10) < frame.moved(false, 50, -1));
	}

	@Test
	void aGuideAlwaysMovesAndStaysOnTheScale() {
		Frame huge = Frame.fit(new Frame.Measures(4000, 300, 16, 5, 8, 0), Axis.linear("Rank", ""), Axis.share("y"),
				new Frame.Extent(0, 10, 0, 1));
		double at = 5;
		for (int i = 0; i < 20; i++) {
			double next = huge.moved(true, at, 1);
			assertTrue(next > at, "stuck at " + at);
			at = next;
		}
		assertEquals(0, frame.moved(false, 0.01, -10), 1e-9);
		assertEquals(100, frame.moved(false, 99.9, 10), 1e-9);
	}
}
