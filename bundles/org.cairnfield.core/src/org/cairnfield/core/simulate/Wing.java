package org.cairnfield.core.simulate;

/**
 * A rectangular part of a floor, in metres of the floor's frame, with the way its corridor runs.
 *
 * @param alongX whether its corridor runs in x (else in y)
 */
public record Wing(double x0, double y0, double x1, double y1, boolean alongX) {

	public Wing {
		if (!(x1 > x0) || !(y1 > y0)) {
			throw new IllegalArgumentException("empty wing " + x0 + ", " + y0 + " to " + x1 + ", " + y1);
		}
	}

	/** Whether the place lies within, edges included. */
	public boolean contains(double x, double y) {
		return x >= x0 && x <= x1 && y >= y0 && y <= y1;
	}

	/** Square metres. */
	public double area() {
		return (x1 - x0) * (y1 - y0);
	}
}
