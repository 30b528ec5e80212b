package org.cairnfield.ui.plan.internal.raster;

/** A straight line between two places. */
final class Segment {

	private Segment() {
	}

	/** How far a place is from it. */
	static double distance(double x, double y, double x1, double y1, double x2, double y2) {
		double dx = x2 - x1;
		double dy = y2 - y1;
		double square = dx * dx + dy * dy;
		double along = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / square));
		return length(x - x1 - along * dx, y - y1 - along * dy);
	}

	/** The length of a vector of pixels: {@link Math#hypot} guards against overflow, which took half of the time of drawing a sprite. */
	static double length(double dx, double dy) {
		return Math.sqrt(dx * dx + dy * dy);
	}

	/** Draws it into a square of pixels, its edges smoothed. */
	static void draw(int[] pixels, int side, double x1, double y1, double x2, double y2, double width, int rgb) {
		double reach = width / 2 + 1;
		int left = (int) Math.max(0, Math.floor(Math.min(x1, x2) - reach));
		int right = (int) Math.min(side - 1, Math.ceil(Math.max(x1, x2) + reach));
		int top = (int) Math.max(0, Math.floor(Math.min(y1, y2) - reach));
		int bottom = (int) Math.min(side - 1, Math.ceil(Math.max(y1, y2) + reach));
		for (int r = top; r <= bottom; r++) {
			for (int c = left; c <= right; c++) {
				double cover = width / 2 + 0.5 - distance(c + 0.5, r + 0.5, x1, y1, x2, y2);
				if (cover > 0) {
					int alpha = (int) Math.round(255 * Math.min(1, cover));
					pixels[r * side + c] = Rgb.over(alpha << 24 | rgb, pixels[r * side + c]);
				}
			}
		}
	}
}
