package org.cairnfield.core.simulate;

import java.util.List;

/** The shape of a floor: a rectangle, or two that make an L. Metres, lower left corner at 0, 0. */
public final class FloorOutline {

	private final List<Wing> wings;
	private final List<Place> corners;

	private FloorOutline(List<Wing> wings, List<Place> corners) {
		this.wings = wings;
		this.corners = corners;
	}

	public static FloorOutline rectangle(double widthMetres, double depthMetres) {
		return new FloorOutline(List.of(new Wing(0, 0, widthMetres, depthMetres, true)),
				List.of(new Place(0, 0), new Place(widthMetres, 0), new Place(widthMetres, depthMetres),
						new Place(0, depthMetres)));
	}

	/**
	 * An L: the rectangle without its upper right part.
	 *
	 * @param notchWidthMetres below the width
	 * @param notchDepthMetres below the depth
	 */
	public static FloorOutline lShape(double widthMetres, double depthMetres, double notchWidthMetres,
			double notchDepthMetres) {
		double innerX = widthMetres - notchWidthMetres;
		double innerY = depthMetres - notchDepthMetres;
		return new FloorOutline(
				List.of(new Wing(0, 0, widthMetres, innerY, true), new Wing(0, innerY, innerX, depthMetres, false)),
				List.of(new Place(0, 0), new Place(widthMetres, 0), new Place(widthMetres, innerY),
						new Place(innerX, innerY), new Place(innerX, depthMetres), new Place(0, depthMetres)));
	}

	/** The rectangles it is made of; they share edges only. */
	public List<Wing> wings() {
		return wings;
	}

	/** Its corners, counter-clockwise, the first not repeated. */
	public List<Place> corners() {
		return corners;
	}

	/** Whether the place lies within, edges included. */
	public boolean contains(double x, double y) {
		for (Wing wing : wings) {
			if (wing.contains(x, y)) {
				return true;
			}
		}
		return false;
	}

	/** Metres from left to right. */
	public double width() {
		return wings.stream().mapToDouble(Wing::x1).max().orElse(0);
	}

	/** Metres from bottom to top. */
	public double depth() {
		return wings.stream().mapToDouble(Wing::y1).max().orElse(0);
	}

	/** Square metres. */
	public double area() {
		return wings.stream().mapToDouble(Wing::area).sum();
	}
}
