package org.cairnfield.ui.plan.internal.model;

/**
 * A place that is known both on a plan image and on the floor.
 *
 * @param column  pixel, counted from the left side of the image
 * @param row     pixel, counted downwards from its upper side
 * @param xMetres on the floor
 * @param yMetres likewise
 */
public record ControlPoint(double column, double row, double xMetres, double yMetres) {

	/** @throws IllegalArgumentException where a number is not finite */
	public ControlPoint {
		if (!Double.isFinite(column + row + xMetres + yMetres)) {
			throw new IllegalArgumentException("a control point needs four finite numbers");
		}
	}
}
