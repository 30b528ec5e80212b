package org.cairnfield.exchange.export;

import java.util.List;

/**
 * Where a site and its floors lie.
 *
 * @param name   as the map names the site
 * @param anchor where on Earth its frame lies, or null where nobody has said
 * @param floors those with an outline
 */
public record SiteFrame(String name, Anchor anchor, List<FloorOutline> floors) {

	/**
	 * The place of a frame.
	 *
	 * @param latitudeDegrees  of its origin, WGS 84
	 * @param longitudeDegrees likewise
	 * @param bearingDegrees   of its y axis, clockwise from north; x points 90° further
	 */
	public record Anchor(double latitudeDegrees, double longitudeDegrees, double bearingDegrees) {
	}

	/**
	 * Corners of a floor in metres of the frame, without repeating the first.
	 *
	 * @param title what people call the floor
	 */
	public record FloorOutline(int level, String title, double[] xMetres, double[] yMetres) {
	}

	/** Copies the list. */
	public SiteFrame {
		floors = List.copyOf(floors);
	}
}
