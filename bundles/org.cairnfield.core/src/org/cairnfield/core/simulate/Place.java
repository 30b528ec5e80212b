package org.cairnfield.core.simulate;

/** A place on a floor, in metres of the floor's frame. */
public record Place(double x, double y) {

	/** Plane distance in metres. */
	public double metresTo(Place other) {
		return Math.hypot(x - other.x, y - other.y);
	}
}
