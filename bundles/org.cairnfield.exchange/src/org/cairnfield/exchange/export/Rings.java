package org.cairnfield.exchange.export;

import org.cairnfield.core.geometry.Polygon;

/** Outlines of floors as rings of positions on Earth. */
final class Rings {

	private Rings() {
	}

	/**
	 * Positions {longitude, latitude}, the first one again at the end, counter-clockwise as RFC 7946 section 3.1.6 and
	 * GeoPackage want an exterior ring; empty for fewer than three corners.
	 */
	static double[][] counterClockwise(SiteFrame.FloorOutline floor, SiteProjection projection) {
		int n = floor.xMetres().length;
		if (n < 3) {
			return new double[0][];
		}
		boolean clockwise = new Polygon(floor.xMetres(), floor.yMetres()).signedArea() < 0;
		double[][] ring = new double[n + 1][];
		for (int i = 0; i < n; i++) {
			int corner = clockwise ? n - 1 - i : i;
			ring[i] = projection.lonLat(floor.xMetres()[corner], floor.yMetres()[corner]);
		}
		ring[n] = ring[0].clone();
		return ring;
	}
}
