package org.cairnfield.ui.plan.internal.outline;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.model.values.Outline;
import org.junit.jupiter.api.Test;

class OutlineShapeTest {

	private static final OutlineShape NOTHING = OutlineShape.of(null);
	private static final OutlineShape SQUARE = OutlineShape.of(Outline.parse("0,0 10,0 10,10 0,10"));

	@Test
	void isDrawnCornerAfterCornerAndClosed() {
		OutlineShape two = NOTHING.added(0, 0).added(3, 0);
		assertEquals(1, two.sides());
		assertEquals(1, two.selected());
		assertSame(two, two.closed(), "two corners enclose nothing");
		OutlineShape three = two.added(3, 4.004);
		OutlineShape ring = three.closed();
		assertTrue(ring.isClosed());
		assertEquals(3, ring.sides());
		assertEquals(5, ring.metres(2));
		assertEquals(Outline.parse("0,0 3,0 3,4"), ring.corners(), "to a centimetre");
	}

	@Test
	void getsAndLosesCorners() {
		OutlineShape five = SQUARE.inserted(2, SQUARE.middleX(1) + 1, SQUARE.middleY(1));
		assertEquals(Outline.parse("0,0 10,0 11,5 10,10 0,10"), five.corners());
		assertEquals(2, five.selected());
		assertEquals(SQUARE.corners(), five.removed().corners());
		assertEquals(1, five.removed().selected());
		assertEquals(Outline.parse("0,0 10,0 10,10 0,12"), SQUARE.moved(3, 0, 12).corners());
		OutlineShape line = SQUARE.selecting(0).removed().removed();
		assertEquals(2, line.size());
		assertFalse(line.isClosed());
		assertEquals(-1, line.removed().removed().selected());
		assertSame(SQUARE, SQUARE.removed(), "none is selected");
	}

	@Test
	void endsASideAcrossTheOneBefore() {
		OutlineShape slope = NOTHING.added(0, 0).added(3, 4);
		assertArrayEquals(new double[] { 3 - 8, 4 + 6 }, slope.atRightAngle(2, -5.4, 9.7), 0.3);
		double[] place = slope.atRightAngle(2, -5.4, 9.7);
		assertEquals(0, (place[0] - 3) * 3 + (place[1] - 4) * 4, 1e-9, "at a right angle");
		assertArrayEquals(new double[] { 6, 8 }, slope.atRightAngle(2, 6.4, 7.7), 1e-9,
				"or straight on: the foot of the perpendicular");
		assertArrayEquals(new double[] { 7, 0 }, NOTHING.added(0, 0).atRightAngle(1, 7, 2), 1e-9,
				"the first side along an axis");
		assertArrayEquals(new double[] { 7, 2 }, NOTHING.atRightAngle(0, 7, 2), "no side yet");
		assertArrayEquals(new double[] { 9, 0 }, SQUARE.atRightAngle(1, 9, 2), 1e-9,
				"in a ring the last side comes before the first");
	}

	@Test
	void saysHowFarItIs() {
		assertEquals("4 corners   100.0\u00a0m²   40.0\u00a0m round", SQUARE.words());
		assertEquals("2 corners   5.0\u00a0m so far   corner 2: x 3.00\u00a0m, y 4.00\u00a0m",
				NOTHING.added(0, 0).added(3, 4).words());
	}

	@Test
	void draftGoesBackAndForthByStepsThatDrawSomething() {
		OutlineDraft draft = new OutlineDraft(SQUARE);
		draft.take(SQUARE.selecting(2));
		draft.show(SQUARE.moved(2, 20, 20));
		assertEquals(20, draft.shape().corners().xMetres(2));
		draft.release();
		assertEquals(SQUARE.selecting(2), draft.shape());
		draft.take(SQUARE.moved(2, 12, 12));
		draft.take(draft.shape().removed());
		draft.undo();
		assertEquals(SQUARE.moved(2, 12, 12), draft.shape());
		draft.undo();
		draft.undo();
		assertEquals(SQUARE.selecting(2), draft.shape());
		draft.redo();
		assertEquals(SQUARE.moved(2, 12, 12), draft.shape());
		draft.take(SQUARE.moved(1, 11, 0));
		draft.redo();
		assertEquals(SQUARE.moved(1, 11, 0), draft.shape(), "another way was taken");
	}
}
