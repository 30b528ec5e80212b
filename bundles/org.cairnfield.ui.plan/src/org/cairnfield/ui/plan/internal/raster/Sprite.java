package org.cairnfield.ui.plan.internal.raster;

import org.cairnfield.ui.plan.SampleLook;

/** A small picture of a sample that is drawn many times: square, its middle in the middle pixel, 0xAARRGGBB. */
final class Sprite {

	private static final int FINE = 4;

	private final int reach;
	private final int[] argb;

	private Sprite(int reach, int[] argb) {
		this.reach = reach;
		this.argb = argb;
	}

	/**
	 * @param mark   bits of {@link SampleMark}
	 * @param radius of the shape in pixels
	 */
	static Sprite of(SampleLook look, int mark, double radius, double pixelsPerPoint, Ink ink) {
		SampleShape shape = new SampleShape(look, mark, radius, pixelsPerPoint, ink);
		int reach = (int) Math.ceil(shape.reach());
		int side = 2 * reach + 1;
		int[] argb = new int[side * side];
		for (int r = 0; r < side; r++) {
			for (int c = 0; c < side; c++) {
				argb[r * side + c] = average(shape, c - reach, r - reach);
			}
		}
		return new Sprite(reach, argb);
	}

	private static int average(SampleShape shape, int column, int row) {
		double alpha = 0;
		double red = 0;
		double green = 0;
		double blue = 0;
		for (int i = 0; i < FINE * FINE; i++) {
			int at = shape.argb(column + (i % FINE + 0.5) / FINE - 0.5, row + (i / FINE + 0.5) / FINE - 0.5);
			int a = at >>> 24;
			alpha += a;
			red += a * (at >> 16 & 0xff);
			green += a * (at >> 8 & 0xff);
			blue += a * (at & 0xff);
		}
		if (alpha == 0) {
			return 0;
		}
		return (int) Math.round(alpha / (FINE * FINE)) << 24 | (int) Math.round(red / alpha) << 16
				| (int) Math.round(green / alpha) << 8 | (int) Math.round(blue / alpha);
	}

	int reach() {
		return reach;
	}

	/** Draws it with its middle at a pixel of a square of pixels; what is outside is cut off. */
	void draw(int[] pixels, int side, int column, int row) {
		int width = 2 * reach + 1;
		int left = column - reach;
		int top = row - reach;
		int from = Math.max(0, -left);
		int to = Math.min(width, side - left);
		int last = Math.min(width, side - top);
		for (int r = Math.max(0, -top); r < last; r++) {
			int source = r * width;
			int target = (top + r) * side + left;
			for (int c = from; c < to; c++) {
				int colour = argb[source + c];
				if (colour != 0) {
					pixels[target + c] = Rgb.over(colour, pixels[target + c]);
				}
			}
		}
	}
}
