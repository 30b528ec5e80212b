package org.cairnfield.core.simulate;

/** A straight wall, in metres of the floor's frame, and what it takes from a wave that crosses it, in dB. */
public record Wall(double x1, double y1, double x2, double y2, double attenuationDb) {

	/** Whether the straight way from a to b crosses it; touching an end does not count. */
	public boolean isBetween(double ax, double ay, double bx, double by) {
		double dx = x2 - x1;
		double dy = y2 - y1;
		double sideA = dx * (ay - y1) - dy * (ax - x1);
		double sideB = dx * (by - y1) - dy * (bx - x1);
		if (sideA * sideB >= 0) {
			return false;
		}
		double wx = bx - ax;
		double wy = by - ay;
		double end1 = wx * (y1 - ay) - wy * (x1 - ax);
		double end2 = wx * (y2 - ay) - wy * (x2 - ax);
		return end1 * end2 < 0;
	}
}
