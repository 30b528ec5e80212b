package org.cairnfield.exchange.floors;

import java.util.List;

/**
 * A feature of a level as it is drawn.
 *
 * @param feature  its id
 * @param isClosed whether the paths are rings, outer ones counter-clockwise and holes clockwise; otherwise lines
 * @param paths    positions {longitude, latitude} in degrees; of a ring the first is not repeated
 */
public record MappedShape(DrawnAs as, String feature, boolean isClosed, List<double[][]> paths) {

	/** Copies the list. */
	public MappedShape {
		paths = List.copyOf(paths);
	}
}
