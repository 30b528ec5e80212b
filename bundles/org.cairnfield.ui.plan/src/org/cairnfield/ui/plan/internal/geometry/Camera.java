package org.cairnfield.ui.plan.internal.geometry;

/**
 * How the floor lies on the canvas: pixel (column, row), row down, of (x, y) metres, y up, is
 * (originColumn + x · pixelsPerMetre, originRow − y · pixelsPerMetre). The origin is at a whole pixel, so that what was drawn
 * once can be shifted without being drawn anew. Immutable.
 */
public record Camera(double pixelsPerMetre, long originColumn, long originRow) {

	public static final double LEAST_PIXELS_PER_METRE = 0.05;
	public static final double MOST_PIXELS_PER_METRE = 2000;
	private static final double FARTHEST = 1e9;

	public double column(double xMetres) {
		return originColumn + xMetres * pixelsPerMetre;
	}

	public double row(double yMetres) {
		return originRow - yMetres * pixelsPerMetre;
	}

	public double xMetres(double column) {
		return (column - originColumn) / pixelsPerMetre;
	}

	public double yMetres(double row) {
		return (originRow - row) / pixelsPerMetre;
	}

	/** The floor moved with the pointer. */
	public Camera panned(int columns, int rows) {
		return new Camera(pixelsPerMetre, originColumn + columns, originRow + rows);
	}

	/** Larger by a factor, within limits; what is under the pixel stays there, to half a pixel. */
	public Camera zoomed(double factor, double column, double row) {
		double scale = limited(pixelsPerMetre * factor);
		return at(scale, xMetres(column), yMetres(row), column, row);
	}

	/** The scale kept, a place brought to a pixel. */
	public Camera showing(double xMetres, double yMetres, double column, double row) {
		return at(pixelsPerMetre, xMetres, yMetres, column, row);
	}

	/** All of some bounds as large as a canvas holds, in its middle. */
	public static Camera fitting(Bounds bounds, int width, int height, int marginPixels) {
		if (bounds.isEmpty()) {
			return at(20, 0, 0, width / 2.0, height / 2.0);
		}
		double across = Math.max(1, width - 2 * marginPixels) / Math.max(bounds.width(), 0.5);
		double up = Math.max(1, height - 2 * marginPixels) / Math.max(bounds.height(), 0.5);
		return at(limited(Math.min(across, up)), bounds.left() + bounds.width() / 2,
				bounds.bottom() + bounds.height() / 2,
				width / 2.0, height / 2.0);
	}

	/** What a canvas shows. */
	public Bounds visible(int width, int height) {
		return Bounds.between(xMetres(0), yMetres(0), xMetres(width), yMetres(height));
	}

	private static Camera at(double scale, double xMetres, double yMetres, double column, double row) {
		return new Camera(scale, whole(column - xMetres * scale), whole(row + yMetres * scale));
	}

	private static long whole(double pixel) {
		return Math.round(Math.max(-FARTHEST, Math.min(FARTHEST, pixel)));
	}

	private static double limited(double scale) {
		return Math.max(LEAST_PIXELS_PER_METRE, Math.min(MOST_PIXELS_PER_METRE, scale));
	}
}
