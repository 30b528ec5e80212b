package org.cairnfield.core.simulate;

/** A corridor by its centre line and width, in metres of the floor's frame; the line runs in x or in y. */
public record Corridor(String name, double x1, double y1, double x2, double y2, double widthMetres) {

	/** Whether the place lies in it. */
	public boolean contains(double x, double y) {
		double half = widthMetres / 2;
		return x >= Math.min(x1, x2) - (x1 == x2 ? half : 0) && x <= Math.max(x1, x2) + (x1 == x2 ? half : 0)
				&& y >= Math.min(y1, y2) - (y1 == y2 ? half : 0) && y <= Math.max(y1, y2) + (y1 == y2 ? half : 0);
	}

	/** Metres along the centre line. */
	public double length() {
		return Math.hypot(x2 - x1, y2 - y1);
	}
}
