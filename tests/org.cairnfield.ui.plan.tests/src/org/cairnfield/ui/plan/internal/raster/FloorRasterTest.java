package org.cairnfield.ui.plan.internal.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.PointGrid;
import org.junit.jupiter.api.Test;

class FloorRasterTest {

	private static final int WHITE = 0xffffff;
	private static final int BLUE = 0x0072b2;
	private static final int LINE = 0x222222;
	private static final int ACCENT = 0xff00ff;
	private static final Ink INK = new Ink(WHITE, LINE, ACCENT);
	private static final int SIDE = 128;
	private static final double SCALE = 20;

	private static FloorRaster raster(PlanPicture picture, Outline outline, double[] x, double[] y, SampleLook look,
			int... marks) {
		byte[] bits = new byte[marks.length];
		for (int i = 0; i < marks.length; i++) {
			bits[i] = (byte) marks[i];
		}
		return new FloorRaster(picture, outline, x, y, new PointGrid(x, y), List.of(look), new int[marks.length], bits,
				INK, null);
	}

	private static int[] draw(FloorRaster raster, int column, int row) {
		int[] pixels = new int[SIDE * SIDE];
		raster.draw(pixels, SIDE, column, row, SCALE, 1);
		return pixels;
	}

	/** One sample in the middle: at (3.2, −3.2) metres, pixel (64, 64). */
	private static int[] one(int mark) {
		return draw(raster(null, null, new double[] { 3.2 }, new double[] { -3.2 },
				SampleLook.solid(BLUE, Marker.CIRCLE), mark), 0, 0);
	}

	private static int at(int[] pixels, int column, int row) {
		return pixels[row * SIDE + column];
	}

	private static long count(int[] pixels, int colour) {
		return Arrays.stream(pixels).filter(p -> p == colour).count();
	}

	@Test
	void drawsASampleInItsColourAtItsPlace() {
		int[] pixels = one(SampleMark.KEPT);
		assertEquals(BLUE, at(pixels, 64, 64));
		assertEquals(WHITE, at(pixels, 64, 74));
		assertEquals(WHITE, at(pixels, 20, 64));
	}

	@Test
	void drawsWhatIsSetAsideFainterAndWithACross() {
		int[] pixels = one(0);
		assertEquals(0, count(pixels, BLUE));
		assertTrue(at(pixels, 64, 64) != WHITE && at(pixels, 64, 64) != BLUE, "the cross");
		int beside = at(pixels, 67, 64);
		assertTrue((beside >> 16) > 0x60, () -> "pale: " + Integer.toHexString(beside));
	}

	@Test
	void ringsWhatIsSelectedInTheAccentColour() {
		assertEquals(0, count(one(SampleMark.KEPT), ACCENT));
		assertTrue(count(one(SampleMark.KEPT | SampleMark.SELECTED), ACCENT) > 20);
	}

	/** More of the accent colour than of the background, which is white. */
	private static boolean isFrame(int pixel) {
		return (pixel >> 16) > 0xe0 && (pixel >> 8 & 0xff) < 0x80;
	}

	/** Where the frame of a marked sample is crossed to the right of its middle, and in the diagonal, in pixels. */
	private static int[] frame(int mark) {
		int[] pixels = one(SampleMark.KEPT | mark);
		int right = 64;
		while (!isFrame(at(pixels, right, 64))) {
			right++;
		}
		int aslant = 0;
		while (!isFrame(at(pixels, 64 + aslant, 64 + aslant))) {
			aslant++;
		}
		return new int[] { right - 64, aslant };
	}

	@Test
	void framesSampleCarrierAndMemberInShapesOfTheirOwn() {
		int[] ring = frame(SampleMark.SELECTED);
		int[] square = frame(SampleMark.CARRIER);
		int[] tipped = frame(SampleMark.MEMBER);
		assertEquals(ring[0] * Math.sqrt(0.5), ring[1], 1.5, "a circle");
		assertEquals(square[0], square[1], 1, "a square");
		assertEquals(tipped[0] / 2.0, tipped[1], 1.5, "a square on its tip");
		assertArrayEquals(ring, frame(SampleMark.SELECTED | SampleMark.CARRIER), "selected comes first");
	}

	@Test
	void marksAFindingByARingAndATriangle() {
		int[] plain = one(SampleMark.KEPT);
		int[] pixels = one(SampleMark.KEPT | SampleMark.FOUND);
		assertEquals(0, count(plain, LINE));
		assertEquals(BLUE, at(pixels, 64, 64));
		long upperRight = 0;
		for (int row = 45; row < 60; row++) {
			for (int column = 69; column < 85; column++) {
				upperRight += at(pixels, column, row) == LINE ? 1 : 0;
			}
		}
		assertTrue(upperRight > 15, "triangle of " + upperRight + " pixels");
	}

	@Test
	void leavesAHollowShapeEmpty() {
		SampleLook hollow = new SampleLook(BLUE, Marker.CIRCLE, SampleLook.Fill.HOLLOW);
		int[] pixels = draw(raster(null, null, new double[] { 3.2 }, new double[] { -3.2 }, hollow, SampleMark.KEPT), 0,
				0);
		assertEquals(WHITE, at(pixels, 64, 64));
		assertTrue(Arrays.stream(pixels).anyMatch(p -> p != WHITE));
	}

	@Test
	void putsADotIntoADottedShape() {
		SampleLook dotted = new SampleLook(BLUE, Marker.CIRCLE, SampleLook.Fill.DOTTED);
		int[] pixels = draw(raster(null, null, new double[] { 3.2 }, new double[] { -3.2 }, dotted, SampleMark.KEPT), 0,
				0);
		assertEquals(BLUE, at(pixels, 64, 64));
		assertTrue(count(pixels, BLUE) < count(one(SampleMark.KEPT), BLUE));
	}

	@Test
	void drawsPiecesThatAgreeWhereTheyMeet() {
		double[] x = { 3.2, 3.3, 6.4, 6.5, 9.5 };
		double[] y = { -3.2, -3.3, -6.4, -6.3, -3.1 };
		FloorRaster raster = raster(null, Outline.parse("1,-1 10,-2 8,-9"), x, y, SampleLook.solid(BLUE, Marker.STAR),
				1, 3, 5, 7, 0);
		int[] whole = new int[4 * SIDE * SIDE];
		raster.draw(whole, 2 * SIDE, 0, 0, SCALE, 1);
		for (int piece = 0; piece < 4; piece++) {
			int left = piece % 2 * SIDE;
			int top = piece / 2 * SIDE;
			int[] pixels = draw(raster, left, top);
			for (int row = 0; row < SIDE; row++) {
				int from = (top + row) * 2 * SIDE + left;
				assertArrayEquals(Arrays.copyOfRange(whole, from, from + SIDE),
						Arrays.copyOfRange(pixels, row * SIDE, (row + 1) * SIDE), "piece " + piece + ", row " + row);
			}
		}
	}

	@Test
	void drawsSelectedSamplesOnTop() {
		double[] x = { 3.2, 3.55 }; // 7 pixels, so that the one would cover the ring of the other
		double[] y = { -3.2, -3.2 };
		FloorRaster raster = raster(null, null, x, y, SampleLook.solid(BLUE, Marker.CIRCLE),
				SampleMark.KEPT | SampleMark.SELECTED, SampleMark.KEPT);
		assertEquals(count(one(SampleMark.KEPT | SampleMark.SELECTED), ACCENT), count(draw(raster, 0, 0), ACCENT));
	}

	@Test
	void drawsTheOutlineWithYUp() {
		int[] pixels = draw(raster(null, Outline.parse("1,-1 5,-1 5,-5 1,-5"), new double[0], new double[0],
				SampleLook.solid(BLUE, Marker.CIRCLE)), 0, 0);
		assertNotEquals(WHITE, at(pixels, 60, 20));
		assertNotEquals(WHITE, at(pixels, 100, 60));
		assertEquals(WHITE, at(pixels, 60, 60));
		assertEquals(WHITE, at(pixels, 60, 10));
	}

	@Test
	void laysTheImageWhereItsPlacementSays() {
		int[] image = new int[100 * 80];
		Arrays.fill(image, WHITE);
		for (int r = 38; r <= 42; r++) {
			for (int c = 58; c <= 62; c++) {
				image[r * 100 + c] = 0; // a dot round pixel (60, 40)
			}
		}
		Placement placement = new Placement(0.05, 30, 0.5, -3);
		int[] pixels = draw(raster(new PlanPicture(100, 80, image, placement), null, new double[0], new double[0],
				SampleLook.solid(BLUE, Marker.CIRCLE)), 0, 0);
		double sumColumn = 0;
		double sumRow = 0;
		int dark = 0;
		for (int i = 0; i < pixels.length; i++) {
			if ((pixels[i] & 0xff) < 0xa0) {
				sumColumn += i % SIDE + 0.5;
				sumRow += i / SIDE + 0.5;
				dark++;
			}
		}
		assertTrue(dark > 10, dark + " dark pixels");
		assertEquals(placement.xMetres(60.5, 40.5) * SCALE, sumColumn / dark, 0.6);
		assertEquals(-placement.yMetres(60.5, 40.5) * SCALE, sumRow / dark, 0.6);
	}

	private static FloorRaster errors(FloorLayer layer) {
		return new FloorRaster(null, null, new double[0], new double[0], new PointGrid(new double[0], new double[0]),
				List.of(), new int[0],
				new byte[0], INK, layer);
	}

	@Test
	void laysTheColourOfAnErrorOverItsPartOfTheFloor() {
		int[] pixels = draw(
				errors(new FloorLayer(List.of(new FloorLayer.Patch(new Bounds(1, -3, 3, -2), BLUE)), List.of(), LINE)),
				0, 0);
		assertEquals(40 * 20, count(pixels, BLUE), "2 m × 1 m");
		assertEquals(BLUE, at(pixels, 20, 40));
		assertEquals(BLUE, at(pixels, 59, 59));
		assertEquals(WHITE, at(pixels, 60, 59));
		assertEquals(WHITE, at(pixels, 20, 39));
	}

	@Test
	void drawsAnArrowFromWhereASampleWasTakenToWhereItWasPut() {
		int[] right = draw(errors(arrow(false)), 0, 0);
		for (int column = 22; column < 98; column++) {
			assertNotEquals(WHITE, at(right, column, 60), "column " + column);
		}
		assertEquals(WHITE, at(right, 15, 60));
		assertEquals(WHITE, at(right, 105, 60));
		assertTrue(inColumns(right, 94, 100) > inColumns(right, 20, 26) + 6, "a head where it was put");
		int[] other = draw(errors(arrow(true)), 0, 0);
		long gaps = IntStream.range(22, 94).filter(column -> at(other, column, 60) == WHITE).count();
		assertTrue(gaps > 20 && gaps < 50, gaps + " of 72 pixels free: dashed to another floor");
	}

	private static FloorLayer arrow(boolean dashed) {
		return new FloorLayer(List.of(), List.of(new FloorLayer.Arrow(1, -3.02, 5, -3.02, dashed)), LINE);
	}

	private static long inColumns(int[] pixels, int from, int to) {
		return IntStream.range(0, pixels.length).filter(i -> i % SIDE >= from && i % SIDE < to && pixels[i] != WHITE)
				.count();
	}

	@Test
	void drawsPiecesOfAnErrorMapThatAgreeWhereTheyMeet() {
		FloorRaster raster = errors(new FloorLayer(List.of(new FloorLayer.Patch(new Bounds(1, -9, 9, -2), BLUE)),
				List.of(new FloorLayer.Arrow(1, -1, 11, -8, true), new FloorLayer.Arrow(9, -9, 6.4, -6.4, false)),
				LINE));
		int[] whole = new int[4 * SIDE * SIDE];
		raster.draw(whole, 2 * SIDE, 0, 0, SCALE, 1);
		for (int piece = 0; piece < 4; piece++) {
			int[] pixels = draw(raster, piece % 2 * SIDE, piece / 2 * SIDE);
			for (int row = 0; row < SIDE; row++) {
				int from = (piece / 2 * SIDE + row) * 2 * SIDE + piece % 2 * SIDE;
				assertArrayEquals(Arrays.copyOfRange(whole, from, from + SIDE),
						Arrays.copyOfRange(pixels, row * SIDE, (row + 1) * SIDE),
						"piece " + piece + ", row " + row);
			}
		}
	}

	@Test
	void turnsPaperDarkOnADarkBackground() {
		int[] image = new int[100 * 80];
		Arrays.fill(image, WHITE);
		FloorRaster raster = new FloorRaster(new PlanPicture(100, 80, image, new Placement(0.05, 0, 0, 0)), null,
				new double[0],
				new double[0], new PointGrid(new double[0], new double[0]), List.of(), new int[0], new byte[0],
				new Ink(0x202020, 0xeeeeee, ACCENT), null);
		int[] pixels = draw(raster, 0, 0);
		assertTrue((at(pixels, 50, 40) & 0xff) < 0x30, () -> Integer.toHexString(at(pixels, 50, 40)));
	}
}
